import { shellMessage } from '../../messages/shell'

/** One answer for what does not exist and what this person may not see. */
export default function NotFound() {
  return (
    <main>
      <h1>{shellMessage('notFound')}</h1>
      <p>{shellMessage('notFoundLead')}</p>
    </main>
  )
}

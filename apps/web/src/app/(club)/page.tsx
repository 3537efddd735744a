import { shellMessage } from '../../messages/shell'

export default function HomePage() {
  return (
    <main>
      <h1>{shellMessage('homeTitle')}</h1>
    </main>
  )
}

import { shellMessage } from '../../messages/shell'

/** Made at build time, without data, so that it opens offline. */
export default function FieldPage() {
  return (
    <main>
      <h1>{shellMessage('product')}</h1>
    </main>
  )
}

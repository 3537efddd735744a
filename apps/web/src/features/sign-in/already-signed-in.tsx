import { signInMessage } from '../../messages/sign-in'

/** Whom this browser is signed in as already, in each club: the press would end that here. */
export type SignedInAs = { readonly clubId: string; readonly name: string; readonly club: string }

/** Said before the press, so that nobody takes a shared device from another without knowing. */
export function AlreadySignedIn({ signedInAs }: { readonly signedInAs: readonly SignedInAs[] }) {
  if (signedInAs.length === 0) return null
  return (
    <section aria-labelledby="already" className="border-l-[7px] border-double border-ink pl-3">
      <h2 id="already" className="font-semibold">
        {signInMessage('already')}
      </h2>
      <ul>
        {signedInAs.map(({ clubId, name, club }) => (
          <li key={clubId}>{signInMessage('alreadyAs', { name, club })}</li>
        ))}
      </ul>
      <p>{signInMessage('alreadyThen')}</p>
    </section>
  )
}

import { paths } from '@espalier/contract/paths'
import { me } from '@espalier/contract/sign-in'
import { type Failure, readInBrowser } from './browser'

export type FoundMember = { readonly memberId: string | null; readonly failure: Failure | null }

/** As whom this browser is signed in to a club just now, by the server's word. */
export async function findMember(clubId: string): Promise<FoundMember> {
  const answer = await readInBrowser(paths.me, me)
  if (!answer.ok) return { memberId: null, failure: answer.failure }
  const memberId = answer.value.clubs.find((club) => club.clubId === clubId)?.memberId ?? null
  return { memberId, failure: null }
}

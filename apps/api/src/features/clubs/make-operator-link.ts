import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { appendEntry } from '../../ledger/append-entry'
import { endLogins } from '../people/end-logins'
import { insertLink, revokeLinks } from '../people/links'
import { lockPerson } from '../people/memberships'

/** A way in made by whoever runs the machine, for the administrator who lost theirs. The record book says so: no actor. */
export async function makeOperatorLink(
  deps: Deps,
  link: { readonly clubId: string; readonly memberId: string; readonly tokenHash: Buffer },
): Promise<Result<null, Refusal>> {
  const linkId = deps.newId()
  const now = deps.now()
  const made = await withClub(deps.pools, link.clubId, async (db): Promise<Result<null, Refusal>> => {
    const person = await lockPerson(db, link.memberId)
    if (person === null || person.left) return refuse({ code: 'not-found' })
    await revokeLinks(db, link.memberId, new Date(now))
    await insertLink(db, { linkId, memberId: link.memberId, tokenHash: link.tokenHash, madeBy: null, now })
    await appendEntry(db, {
      club: link.clubId,
      entry: deps.newId(),
      kind: 'sign-in-link.made',
      subject: link.memberId,
      actor: null,
      at: new Date(now).toISOString(),
      facts: { link: linkId },
    })
    return ok(null)
  })
  if (made.ok) await endLogins(deps, link.clubId, link.memberId)
  return made
}

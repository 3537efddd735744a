import type { SignInLinkBody } from '@espalier/contract/sign-in'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { insertLink, revokeLinks } from './links'
import { hasPerson, holdPerson } from './memberships'

/** A new one-time way in for a person; it ends the one made before. The server learns only the secret's hash. */
export function makeSignInLink(
  deps: Deps,
  request: CommandRequest,
  memberId: string,
  body: SignInLinkBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'sign-in-links.make',
    find: async (db) => ((await hasPerson(db, memberId)) ? {} : null),
    lock: ({ db }) => holdPerson(db, memberId),
    target: () => ({}),
    unique: { sign_in_link_club_id_token_hash_key: '/tokenHash' },
    work: async ({ db, at, now, member }, person) => {
      if (person.left) return refuse({ code: 'person-left' })
      await revokeLinks(db, memberId, at)
      await insertLink(db, {
        linkId: body.id,
        memberId,
        tokenHash: Buffer.from(body.tokenHash, 'hex'),
        madeBy: member.memberId,
        now,
      })
      return ok({
        status: 201,
        id: body.id,
        version: null,
        entry: { kind: 'sign-in-link.made', subjectId: memberId, facts: { link: body.id } },
      })
    },
  })
}

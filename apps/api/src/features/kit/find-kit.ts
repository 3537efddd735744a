import { createHash } from 'node:crypto'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { checkAccess } from '../../commands/check-access'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Login } from '../../http/logins'
import type { Refusal } from '../../http/problem-error'
import { kitBodyOf } from './bodies'
import { findContentText, findKitRow, type KitRow } from './queries'

export type KitText = { readonly text: string; readonly tag: string }

// Frozen texts by their hash: equal hashes are equal texts, whichever club asks.
const TEXTS_MAX = 200
const texts = new Map<string, string>()

/** A team's kit as text with its entity tag: one statement, and a second one the first time a version is met. */
export function findKit(
  deps: Deps,
  login: Login,
  ids: { readonly clubId: string; readonly teamId: string },
): Promise<Result<KitText, Refusal>> {
  return withClub(deps.pools, ids.clubId, async (db): Promise<Result<KitText, Refusal>> => {
    const row = await findKitRow(db, { accountId: login.accountId, teamId: ids.teamId, now: deps.now() })
    if (row === null || row.team === null) return refuse({ code: 'not-found' })
    const member = { memberId: row.member_id, clubId: ids.clubId, roles: row.member_roles }
    const allowed = checkAccess(deps.accessRules, member, 'kit.read', { teamId: ids.teamId })
    if (!allowed.ok) return allowed
    const kit = JSON.stringify(kitBodyOf({ ...row, team: row.team }, ids, deps.nameKey))
    const text = `${kit.slice(0, -1)},"adopted":${await adoptedText(db, row.adopted)}}`
    return ok({ text, tag: `"${createHash('sha256').update(text).digest('base64url').slice(0, 27)}"` })
  })
}

async function adoptedText(db: ClubDb, adopted: KitRow['adopted']): Promise<string> {
  if (adopted === null) return 'null'
  const { curriculumId, number, contentHash } = adopted
  const content = texts.get(contentHash) ?? (await fetchText(db, adopted))
  return `{"curriculumId":"${curriculumId}","number":${number},"contentHash":"${contentHash}","content":${content}}`
}

async function fetchText(db: ClubDb, adopted: NonNullable<KitRow['adopted']>): Promise<string> {
  const text = await findContentText(db, adopted.curriculumId, adopted.number)
  const [oldest] = texts.keys()
  if (texts.size >= TEXTS_MAX && oldest !== undefined) texts.delete(oldest)
  texts.set(adopted.contentHash, text)
  return text
}

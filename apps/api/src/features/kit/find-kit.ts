import { createHash } from 'node:crypto'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { checkAccess } from '../../commands/check-access'
import { type ClubDb, withClub } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Login } from '../../http/logins'
import type { Refusal } from '../../http/problem-error'
import { kitBodyOf } from './bodies'
import { findKept, type KitText, keepKit } from './kept-kits'
import { findContentText, findKitAsker, findKitRow, type KitRow } from './queries'

// Frozen texts by their hash: equal hashes are equal texts, whichever club asks.
const TEXTS_MAX = 200
const texts = new Map<string, string>()

type Ids = { readonly clubId: string; readonly teamId: string }

/**
 * A team's kit as text with its entity tag. Who asks and how long the record book is are looked up every time; the kit
 * itself is made again only when it can have changed.
 */
export function findKit(deps: Deps, login: Login, ids: Ids): Promise<Result<KitText, Refusal>> {
  return withClub(deps.pools, ids.clubId, async (db): Promise<Result<KitText, Refusal>> => {
    const asker = await findKitAsker(db, login.accountId, ids.teamId)
    if (asker === null || !asker.hasTeam) return refuse({ code: 'not-found' })
    const member = { memberId: asker.memberId, clubId: ids.clubId, roles: asker.roles }
    const allowed = checkAccess(deps.accessRules, member, 'kit.read', { teamId: ids.teamId })
    if (!allowed.ok) return allowed
    const now = deps.now()
    return ok(
      findKept(ids.clubId, ids.teamId, asker.bookSize, now) ?? (await makeKit(deps, db, ids, asker.bookSize, now)),
    )
  })
}

async function makeKit(deps: Deps, db: ClubDb, ids: Ids, bookSize: number, now: number): Promise<KitText> {
  const row = await findKitRow(db, ids.teamId, now)
  const kit = JSON.stringify(kitBodyOf(row, ids, deps.nameKey))
  const text = `${kit.slice(0, -1)},"adopted":${await adoptedText(db, row.adopted)}}`
  const tag = `"${createHash('sha256').update(text).digest('base64url').slice(0, TAG_LENGTH)}"`
  keepKit(ids.clubId, ids.teamId, { text, tag, bookSize, from: now, until: row.valid_until.getTime() })
  return { text, tag }
}

/** 162 bits of the hash: more than enough for two kits never to be taken for one. */
const TAG_LENGTH = 27

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

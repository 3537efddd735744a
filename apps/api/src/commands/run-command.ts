import { type AccessTarget, listTeamsInReach, type Member, type Permission } from '@espalier/domain/access'
import type { EntryFacts, EntryKind } from '@espalier/domain/ledger'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { isLockTimeout, isRepeatable, sqlStateOf } from '../db/failures'
import { type ClubDb, withClub } from '../db/with-club'
import type { Deps } from '../deps'
import { checkVersion, type Versioned } from '../http/conditions'
import type { Refusal } from '../http/problem-error'
import { appendEntry } from '../ledger/append-entry'
import { checkAccess } from './check-access'
import { type Claim, type CommandOutcome, claimKey, fillClaim, findAnswer } from './claim-key'
import { findMember, lockMember } from './member'

/** Who asks for what, once: the same key and fingerprint are the same command. */
export type CommandRequest = {
  readonly clubId: string
  readonly accountId: string
  readonly key: string
  readonly fingerprint: Buffer
  readonly ifMatch: string | undefined
}

/** The club as a command sees it while it runs. Every step takes this one, so all of them stand or fall together. */
export type CommandContext = {
  readonly db: ClubDb
  readonly member: Member
  /** Milliseconds, the same instant for everything the command writes. */
  readonly now: number
  readonly at: Date
  /** The id of the entry that this command will write; effects carry it. */
  readonly entryId: string
  readonly newId: () => string
}

export type EntryDraft = {
  readonly kind: EntryKind
  readonly subjectId: string
  readonly teamId?: string
  readonly facts: EntryFacts
}

export type Effect = {
  readonly status: 200 | 201
  readonly id: string
  readonly version: number | null
  /** Null only for what never enters the record book: who of the children came. */
  readonly entry: EntryDraft | null
}

export type Command<Locked> = {
  readonly permission: Permission
  /**
   * What the policy is asked about, read without any lock; null where it does not exist. It alone answers whoever could
   * never do this: a person without the permission must hold up nobody who has it.
   */
  readonly find: (db: ClubDb) => Promise<AccessTarget | null>
  /** Taken before the member's own row, by commands that lock the rows of other members. */
  readonly lockFirst?: (db: ClubDb) => Promise<void>
  /** Locks everything the command reads before it decides, in the fixed order; null where it does not exist. */
  readonly lock: (context: CommandContext) => Promise<Locked | null>
  readonly target: (locked: Locked) => AccessTarget
  /** Present where the write is an edit of something versioned: then If-Match is asked for. */
  readonly current?: (locked: Locked) => Versioned
  readonly work: (context: CommandContext, locked: Locked) => Promise<Result<Effect, Refusal>>
  /** What a unique index of the database stands for in the body: the index by name, then a JSON Pointer. */
  readonly unique?: Readonly<Record<string, string>>
}

export type CommandAnswer = CommandOutcome & { readonly replayed: boolean }

/**
 * The one order of every write: the club's transaction, membership, key, locks, policy, version, decision and effects,
 * the record book, the stored answer, commit. A refusal anywhere rolls all of it back, the key too.
 */
export async function runCommand<Locked>(
  deps: Deps,
  request: CommandRequest,
  command: Command<Locked>,
): Promise<Result<CommandAnswer, Refusal>> {
  const progress = { claiming: false }
  try {
    return await withClub(deps.pools, request.clubId, (db) => attempt(deps, request, command, db, progress))
  } catch (error) {
    // Somebody else holds the same key for longer than this role waits: the first sending has not ended yet.
    if (progress.claiming && isLockTimeout(error)) return refuse({ code: 'still-running' })
    // Every repeat met somebody else's work: nothing happened, and the same may succeed in a moment.
    if (isRepeatable(error)) return refuse({ code: 'not-ready' })
    if (sqlStateOf(error) !== UNIQUE_VIOLATION) throw error
    const pointer = command.unique?.[constraintOf(error) ?? ''] ?? '/id'
    return refuse({ code: 'already-exists', errors: [{ pointer, detail: 'is there already' }] })
  }
}

const UNIQUE_VIOLATION = '23505'

function constraintOf(error: unknown): string | null {
  const { constraint } = error as { readonly constraint?: unknown }
  return typeof constraint === 'string' ? constraint : null
}

async function attempt<Locked>(
  deps: Deps,
  request: CommandRequest,
  command: Command<Locked>,
  db: ClubDb,
  progress: { claiming: boolean },
): Promise<Result<CommandAnswer, Refusal>> {
  const asking = await findMember(db, request.accountId)
  if (asking === null) return refuse({ code: 'not-found' })
  if (!isGranted(deps, asking, command.permission)) return refuseWithoutLocks(deps, request, command, db, asking)
  await command.lockFirst?.(db)
  const member = await lockMember(db, request.accountId)
  if (member === null) return refuse({ code: 'not-found' })
  const now = deps.now()
  const context: CommandContext = { db, member, now, at: new Date(now), entryId: deps.newId(), newId: deps.newId }
  const claim: Claim = {
    accountId: request.accountId,
    key: request.key,
    fingerprint: request.fingerprint,
    at: context.at,
  }
  progress.claiming = true
  const claimed = await claimKey(db, claim)
  progress.claiming = false
  if (!claimed.ok) return claimed
  if (claimed.value !== null) return ok({ ...claimed.value, replayed: true })

  const locked = await command.lock(context)
  if (locked === null) return refuse({ code: 'not-found' })
  const allowed = checkAccess(deps.accessRules, member, command.permission, command.target(locked))
  if (!allowed.ok) return allowed
  if (command.current !== undefined) {
    const fresh = checkVersion(request.ifMatch, command.current(locked))
    if (!fresh.ok) return fresh
  }
  const effect = await command.work(context, locked)
  if (!effect.ok) return effect
  const outcome = await writeEntry(context, effect.value)
  await fillClaim(db, claim, outcome)
  return ok({ ...outcome, replayed: false })
}

/** Whether any role of the member has the permission anywhere: on the whole club or on some team. */
function isGranted(deps: Deps, member: Member, permission: Permission): boolean {
  const reach = listTeamsInReach(member, permission, deps.accessRules)
  return reach.kind === 'whole-club' || reach.teamIds.length > 0
}

/** The same answers as after the locks, for whoever could never pass the policy; a command done earlier is replayed. */
async function refuseWithoutLocks<Locked>(
  deps: Deps,
  request: CommandRequest,
  command: Command<Locked>,
  db: ClubDb,
  member: Member,
): Promise<Result<CommandAnswer, Refusal>> {
  const done = await findAnswer(db, request)
  if (!done.ok) return done
  if (done.value !== null) return ok({ ...done.value, replayed: true })
  const target = await command.find(db)
  if (target === null) return refuse({ code: 'not-found' })
  const allowed = checkAccess(deps.accessRules, member, command.permission, target)
  return allowed.ok ? refuse({ code: 'not-allowed' }) : allowed
}

async function writeEntry(context: CommandContext, effect: Effect): Promise<CommandOutcome> {
  const { status, id, version, entry } = effect
  if (entry === null) return { status, id, version, entry: null }
  await appendEntry(context.db, {
    club: context.db.clubId,
    entry: context.entryId,
    kind: entry.kind,
    subject: entry.subjectId,
    ...(entry.teamId === undefined ? {} : { team: entry.teamId }),
    actor: context.member.memberId,
    at: context.at.toISOString(),
    facts: entry.facts,
  })
  return { status, id, version, entry: context.entryId }
}

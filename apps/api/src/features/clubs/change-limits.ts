import { createHash } from 'node:crypto'
import type { LimitsEdit } from '@espalier/contract/places'
import { type ClubProfileFault, countOwnValues, decideClubProfiles } from '@espalier/domain/check'
import type { ClubLimits, ClubSettings } from '@espalier/domain/curriculum'
import { canonicalJson, type PlainValue } from '@espalier/domain/ledger'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { findClub, lockClub } from './queries'

/** How the club has its patterns checked from now on. Versions published before keep the settings frozen in them. */
export function changeLimits(
  deps: Deps,
  request: CommandRequest,
  { limits }: LimitsEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'club-limits.write',
    find: async () => ({}),
    lockFirst: lockClub,
    lock: ({ db }) => findClub(db),
    target: () => ({}),
    current: ({ version, settings }) => ({ version, document: { limits: limitsOf(settings) } }),
    work: async ({ db }, club) => {
      const decided = decideClubProfiles(limits.profiles)
      if (!decided.ok) {
        return refuse({ code: 'profiles-not-possible', errors: decided.refusal.faults.map(pointerOf) })
      }
      const settings = withLimits(club.settings, { ...limits, profiles: decided.value })
      const version = club.version + 1
      await db.sql.changed({
        name: 'update-settings',
        text: 'update club set settings = $2, version = $3 where club_id = $1',
        values: [db.clubId, JSON.stringify(settings), version],
      })
      const facts = limitFacts(limitsOf(settings), version)
      return ok({
        status: 200,
        id: db.clubId,
        version,
        entry: { kind: 'club-limits.changed', subjectId: db.clubId, facts },
      })
    },
  })
}

function limitsOf({ crossingAtRelease, penaltyMarkYards7v7, profiles }: ClubSettings): ClubLimits {
  return { crossingAtRelease, penaltyMarkYards7v7, profiles: profiles ?? {} }
}

/** A club without own values keeps settings as they were before there were any, so that equal settings are equal bytes. */
function withLimits({ profiles: _, ...kept }: ClubSettings, { profiles, ...limits }: ClubLimits): ClubSettings {
  const settings = { ...kept, ...limits }
  return countOwnValues(profiles) === 0 ? settings : { ...settings, profiles }
}

function limitFacts(limits: ClubLimits, version: number) {
  const { crossingAtRelease, penaltyMarkYards7v7, profiles } = limits
  const text = canonicalJson(limits as unknown as PlainValue)
  return {
    version,
    crossingAtRelease,
    penaltyMarkYards7v7,
    ownValues: countOwnValues(profiles),
    limitsHash: createHash('sha256').update(text, 'utf8').digest('hex'),
  }
}

function pointerOf({ profileId, refusal }: ClubProfileFault): ProblemPointer {
  const pointer = `/limits/profiles/${profileId}/${refusal.field}`
  return refusal.code === 'profile-value-out-of-range'
    ? { pointer, detail: `must be from ${refusal.least} to ${refusal.most}` }
    : { pointer, detail: `must not be above ${refusal.above}` }
}

import type { EquipmentBody } from '@espalier/contract/places'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { EQUIPMENT_KINDS, type Equipment } from '@espalier/domain/session'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { lockClub } from '../clubs/queries'
import { lockTeam } from '../teams/queries'
import { countsOf, versionOf } from './bodies'
import { CLUB_STORE, listEquipmentOf } from './queries'

/** What the club's store or one team's bag holds, counted anew. */
export function countEquipment(
  deps: Deps,
  request: CommandRequest,
  body: EquipmentBody,
): Promise<Result<CommandAnswer, Refusal>> {
  const { teamId } = body
  const ownerKey = teamId ?? CLUB_STORE
  return runCommand(deps, request, {
    permission: 'equipment.write',
    find: async () => ({}),
    // The store's owner is the club; a bag's is its team, locked below.
    ...(teamId === null ? { lockFirst: lockClub } : {}),
    lock: async ({ db }) => ({
      hasOwner: teamId === null || (await lockTeam(db, teamId)) !== null,
      rows: await listEquipmentOf(db, ownerKey),
    }),
    target: () => ({}),
    current: ({ rows }) => ({ version: versionOf(rows), document: { counts: countsOf(rows) } }),
    work: async ({ db }, { hasOwner, rows }) => {
      if (!hasOwner) {
        return refuse({
          code: 'reference-unknown',
          errors: [{ pointer: '/teamId', detail: 'is no team of this club' }],
        })
      }
      const version = versionOf(rows) + 1
      await saveCounts(db, ownerKey, body.counts, version)
      const { cone, pole, ball, bib } = body.counts
      return ok({
        status: 200,
        id: body.id,
        version,
        entry: {
          kind: 'equipment.counted',
          subjectId: teamId ?? db.clubId,
          ...(teamId === null ? {} : { teamId }),
          facts: { cone, pole, smallGoal: body.counts['small-goal'], ball, bib },
        },
      })
    },
  })
}

async function saveCounts(db: ClubDb, ownerKey: string, counts: Equipment, version: number): Promise<void> {
  await db.sql.changed({
    name: 'count-equipment',
    text: `insert into equipment (club_id, owner_key, kind, count, version)
           select $1, $2, kind, count, $5 from unnest($3::text[], $4::smallint[]) as counted (kind, count)
           on conflict (club_id, owner_key, kind) do update set count = excluded.count, version = excluded.version`,
    values: [db.clubId, ownerKey, [...EQUIPMENT_KINDS], EQUIPMENT_KINDS.map((kind) => counts[kind]), version],
  })
}

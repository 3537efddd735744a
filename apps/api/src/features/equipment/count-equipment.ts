import type { EquipmentBody } from '@espalier/contract/places'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { EQUIPMENT_KINDS } from '@espalier/domain/session'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { lockTeam } from '../teams/queries'
import { CLUB_STORE } from './queries'

/** What the club's store or one team's bag holds, counted anew. */
export function countEquipment(
  deps: Deps,
  request: CommandRequest,
  body: EquipmentBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'equipment.write',
    find: async () => ({}),
    lock: async ({ db }) => ({ team: body.teamId === null ? null : await lockTeam(db, body.teamId) }),
    target: () => ({}),
    work: async ({ db }, { team }) => {
      if (body.teamId !== null && team === null) {
        return refuse({
          code: 'reference-unknown',
          errors: [{ pointer: '/teamId', detail: 'is no team of this club' }],
        })
      }
      await db.sql.changed({
        name: 'count-equipment',
        text: `insert into equipment (club_id, owner_key, kind, count)
               select $1, $2, kind, count from unnest($3::text[], $4::smallint[]) as counted (kind, count)
               on conflict (club_id, owner_key, kind) do update set count = excluded.count`,
        values: [
          db.clubId,
          body.teamId ?? CLUB_STORE,
          [...EQUIPMENT_KINDS],
          EQUIPMENT_KINDS.map((kind) => body.counts[kind]),
        ],
      })
      const { cone, pole, ball, bib } = body.counts
      return ok({
        status: 200,
        id: body.id,
        version: null,
        entry: {
          kind: 'equipment.counted',
          subjectId: body.teamId ?? db.clubId,
          ...(body.teamId === null ? {} : { teamId: body.teamId }),
          facts: { cone, pole, smallGoal: body.counts['small-goal'], ball, bib },
        },
      })
    },
  })
}

import type { TeamBody } from '@espalier/contract/places'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'

export function addTeam(deps: Deps, request: CommandRequest, body: TeamBody): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'teams.write',
    find: async () => ({}),
    lock: async () => true,
    target: () => ({}),
    unique: { team_name: '/name' },
    work: async ({ db }) => {
      if (!(await hasSeason(db, body.seasonId))) {
        const errors = [{ pointer: '/seasonId', detail: 'is no season of this club' }]
        return refuse({ code: 'reference-unknown', errors })
      }
      await db.sql.changed({
        name: 'insert-team',
        text: `insert into team (club_id, team_id, season_id, name, age_group, category, format_id)
               values ($1, $2, $3, $4, $5, $6, $7)`,
        values: [db.clubId, body.id, body.seasonId, body.name, body.ageGroup, body.category, body.formatId],
      })
      return ok({
        status: 201,
        id: body.id,
        version: 1,
        entry: {
          kind: 'team.added',
          subjectId: body.id,
          teamId: body.id,
          facts: { season: body.seasonId, ageGroup: body.ageGroup, category: body.category, format: body.formatId },
        },
      })
    },
  })
}

async function hasSeason(db: ClubDb, seasonId: string): Promise<boolean> {
  const rows = await db.sql.rows({
    name: 'hold-season',
    text: 'select 1 from season where club_id = $1 and season_id = $2 for key share',
    values: [db.clubId, seasonId],
  })
  return rows.length > 0
}

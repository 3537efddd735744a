import { type PlayerEdit, SQUAD_MAX } from '@espalier/contract/squads'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { dayInZone } from '../../clock/local-dates'
import { type CommandAnswer, type CommandContext, type CommandRequest, runCommand } from '../../commands/run-command'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findClub } from '../clubs/queries'
import { lockTeam } from '../teams/queries'
import { nameOf } from './bodies'
import { hasPlayer, listPlayers, lockPlayer, type PlayerRow } from './queries'
import { resealName, sealName } from './sealed-names'

/** A child's row, and leaving. The name is sealed anew under the child's own key. */
export function changePlayer(
  deps: Deps,
  request: CommandRequest,
  teamId: string,
  playerId: string,
  body: PlayerEdit,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'squad.write',
    find: async (db) => ((await hasPlayer(db, teamId, playerId)) ? { teamId } : null),
    lock: async ({ db }) => ((await lockTeam(db, teamId)) === null ? null : lockPlayer(db, teamId, playerId)),
    target: () => ({ teamId }),
    current: (row) => ({ version: row.version, document: documentOf(row, request.clubId, deps) }),
    unique: { shirt_once: '/shirt' },
    work: async (context, row) => {
      if (body.home !== null && body.home === body.stretch) {
        return refuse({ code: 'position-twice', errors: [{ pointer: '/stretch', detail: 'must differ from home' }] })
      }
      if (row.left_at !== null && !body.left && (await listPlayers(context.db, teamId)).length >= SQUAD_MAX) {
        const errors = [{ pointer: '/left', detail: `the squad takes at most ${SQUAD_MAX} children` }]
        return refuse({ code: 'squad-row-faults', errors })
      }
      const version = row.version + 1
      await updatePlayer(context, deps, row, body, version)
      return ok({
        status: 200,
        id: playerId,
        version,
        entry: { kind: 'player.changed', subjectId: playerId, teamId, facts: { version, left: body.left } },
      })
    },
  })
}

function documentOf(row: PlayerRow, clubId: string, deps: Deps) {
  const { shirt, home, stretch, goalkeeper, foot } = row
  const shortName = nameOf(row, clubId, deps.nameKey)
  return { shortName, shirt, home, stretch, goalkeeper, foot, left: row.left_at !== null }
}

async function updatePlayer(
  { db, now }: CommandContext,
  deps: Deps,
  row: PlayerRow,
  body: PlayerEdit,
  version: number,
): Promise<void> {
  const subject = { clubId: db.clubId, playerId: row.player_id }
  const club = await findClub(db)
  const leftAt = body.left ? (row.left_at ?? dayInZone(now, club!.zone)) : null
  let sealed: Buffer
  if (row.wrapped_key === null) {
    const fresh = sealName(deps.nameKey, subject, body.shortName)
    sealed = fresh.sealed
    await db.sql.changed({
      name: 'insert-subject-key',
      text: 'insert into subject_key (club_id, player_id, wrapped_key) values ($1, $2, $3)',
      values: [db.clubId, row.player_id, fresh.wrappedKey],
    })
  } else {
    sealed = resealName(deps.nameKey, subject, row.wrapped_key, body.shortName)
  }
  await db.sql.changed({
    name: 'update-player',
    text: `update player set shirt = $3, name_sealed = $4, home = $5, stretch = $6, goalkeeper = $7, foot = $8,
             version = $9, left_at = $10 where club_id = $1 and player_id = $2`,
    values: [
      db.clubId,
      row.player_id,
      body.shirt,
      sealed,
      body.home,
      body.stretch,
      body.goalkeeper,
      body.foot,
      version,
      leftAt,
    ],
  })
}

import { type PlayerBody, SQUAD_MAX, type SquadImportBody } from '@espalier/contract/squads'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { type CommandAnswer, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { findTeam, lockTeam } from '../teams/queries'
import { listPlayers, type PlayerRow } from './queries'
import { sealName } from './sealed-names'

/** Children for a squad, all of them or none: the page has already dropped the rows that cannot stand. */
export function importSquad(
  deps: Deps,
  request: CommandRequest,
  teamId: string,
  body: SquadImportBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'squad.write',
    find: (db) => findTeam(db, teamId),
    lock: ({ db }) => lockTeam(db, teamId),
    target: (team) => ({ teamId: team.teamId }),
    unique: { player_pkey: '/players' },
    work: async ({ db }) => {
      const squad = await listPlayers(db, teamId)
      const faults = [...listRowFaults(body.players, squad), ...listTooMany(squad.length, body.players.length)]
      if (faults.length > 0) return refuse({ code: 'squad-row-faults', errors: faults })
      for (const player of body.players) await insertPlayer(db, deps, teamId, player)
      return ok({
        status: 201,
        id: body.id,
        version: null,
        entry: { kind: 'squad.imported', subjectId: body.id, teamId, facts: { children: body.players.length } },
      })
    },
  })
}

/** The first row that no longer fits; the squad is counted under the team's lock. */
function listTooMany(held: number, added: number): readonly ProblemPointer[] {
  if (held + added <= SQUAD_MAX) return []
  const detail = `the squad has ${held} children and takes at most ${SQUAD_MAX}`
  return [{ pointer: `/players/${Math.max(0, SQUAD_MAX - held)}`, detail }]
}

/** Two children with one shirt or id, and one child with one position twice, each with the row it stands in. */
function listRowFaults(players: readonly PlayerBody[], squad: readonly PlayerRow[]): readonly ProblemPointer[] {
  const shirts = new Set(squad.flatMap(({ shirt }) => shirt ?? []))
  const ids = new Set<string>()
  return players.flatMap((player, index): readonly ProblemPointer[] => {
    const faults: ProblemPointer[] = []
    if (player.shirt !== null && shirts.has(player.shirt))
      faults.push({ pointer: `/players/${index}/shirt`, detail: 'somebody has this shirt', code: 'already-exists' })
    if (ids.has(player.id))
      faults.push({ pointer: `/players/${index}/id`, detail: 'stands twice', code: 'identifier-twice' })
    if (player.home !== null && player.home === player.stretch)
      faults.push({ pointer: `/players/${index}/stretch`, detail: 'must differ from home', code: 'position-twice' })
    if (player.shirt !== null) shirts.add(player.shirt)
    ids.add(player.id)
    return faults
  })
}

async function insertPlayer(db: ClubDb, deps: Deps, teamId: string, player: PlayerBody): Promise<void> {
  const name = sealName(deps.nameKey, { clubId: db.clubId, playerId: player.id }, player.shortName)
  await db.sql.changed({
    name: 'insert-player',
    text: `insert into player (club_id, player_id, team_id, shirt, name_sealed, home, stretch, goalkeeper, foot)
           values ($1, $2, $3, $4, $5, $6, $7, $8, $9)`,
    values: [
      db.clubId,
      player.id,
      teamId,
      player.shirt,
      name.sealed,
      player.home,
      player.stretch,
      player.goalkeeper,
      player.foot,
    ],
  })
  await db.sql.changed({
    name: 'insert-subject-key',
    text: 'insert into subject_key (club_id, player_id, wrapped_key) values ($1, $2, $3)',
    values: [db.clubId, player.id, name.wrappedKey],
  })
}

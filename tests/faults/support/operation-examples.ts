import { paths, pathTo } from '@espalier/contract/paths'
import type { Operation } from '@espalier/contract/records'
import { kit as kitShape } from '@espalier/contract/sessions'
import { millimetres } from '@espalier/domain/quantities'
import { planEvening } from '@espalier/domain/session'
import * as z from 'zod/mini'
import { type FurnishedClub, reportOf, sha256Hex } from '../../factories/furnished-club'
import { freshId } from '../../support/database'

type OperationMaker = (club: FurnishedClub, round: number) => Promise<object>

const envelope = (op: Operation['op']) => ({
  op,
  v: 1,
  id: freshId(),
  at: '2026-09-15T18:00:00.000Z',
  zone: 'Europe/London',
})

/** One right operation of each kind; a round of its own for each time that one is asked for. */
export const OPERATION_EXAMPLES: Readonly<Record<Operation['op'], OperationMaker>> = {
  'mark-attendance': async ({ teams: [team] }, round) => ({
    ...envelope('mark-attendance'),
    body: {
      teamId: team.teamId,
      dateId: team.dateIds[0],
      marks: [{ playerId: team.playerId, came: round % 2 === 0 }],
    },
  }),
  'keep-plan': async (club) => {
    const [team] = club.teams
    const path = pathTo(paths.kit, { clubId: club.clubId, teamId: team.teamId })
    const kit = z.parse(kitShape, (await team.coach.person.get(path)).json)
    const date = kit.dates.find(({ dateId }) => dateId === team.dateIds[3])!
    const space = kit.spaces.find(({ spaceId }) => spaceId === date.spaceId)!.space
    const turnout = { here: kit.squad.map(({ playerId }) => playerId), sitsOut: [], guests: [], adults: 1 }
    const plan = planEvening({ kit, date, turnout, space, paceMm: millimetres(800) })
    const { curriculumId, number } = kit.adopted!
    const body = {
      teamId: team.teamId,
      dateId: date.dateId,
      curriculumId,
      number,
      inputsHash: sha256Hex('inputs'),
      plan,
    }
    return { ...envelope('keep-plan'), body }
  },
  'report-session': async (club, round) =>
    reportOf(club.teams[0], [club.stageId], { dateId: club.teams[0].dateIds[round] }),
}

import { createHash } from 'node:crypto'
import { paths, pathTo } from '@espalier/contract/paths'
import { type Operation, operationResults } from '@espalier/contract/records'
import { kit as kitShape } from '@espalier/contract/sessions'
import { canonicalJson, type PlainValue } from '@espalier/domain/ledger'
import { assert, millimetres } from '@espalier/domain/quantities'
import { type Kit, type KitDate, planEvening, type SessionPlan, type Turnout } from '@espalier/domain/session'
import * as z from 'zod/mini'
import type { Actor } from './actor'
import { DEMO_CLUB_ID, demoId } from './ids'
import { CLUB_ZONE, type TeamName } from './invented'

const clubId = DEMO_CLUB_ID

/** The coach's own pace: 80 cm (habit: common practice, no source). */
const PACE_MM = millimetres(800)
const GOT_OUT = ['none', 'some', 'half', 'most'] as const

export type DemoEvening = {
  readonly team: TeamName
  readonly coach: Actor
  readonly secondAdult: string | null
  readonly dateId: string
  /** The how manieth evening of the team, from 0: turnouts and judgements differ by it, always the same way. */
  readonly place: number
}

/** One evening as a phone would send it: who came, the plan it computed from the kit, and the report. */
export async function reportEvening(evening: DemoEvening): Promise<void> {
  const teamId = demoId('team', evening.team)
  const kit = z.parse(kitShape, await evening.coach.get(pathTo(paths.kit, { clubId, teamId })))
  const date = kit.dates.find(({ dateId }) => dateId === evening.dateId)
  assert(date, 'the kit of an evening has its date')
  const turnout = turnoutOf(kit, evening.place)
  const space = kit.spaces.find(({ spaceId }) => spaceId === date.spaceId)!.space
  const plan = planEvening({ kit, date, turnout, space, paceMm: PACE_MM })
  const operations = [
    attendanceOf(kit, date, turnout),
    planOperationOf(kit, date, plan),
    reportOf(kit, date, plan, evening),
  ]
  const answer = await evening.coach.send('POST', pathTo(paths.operations, { clubId }), { operations })
  for (const result of z.parse(operationResults, answer).results) {
    assert(
      result.status === 'applied' || result.status === 'replayed',
      `an operation of the demo: ${JSON.stringify(result)}`,
    )
  }
}

/** Two or three children are missing, never the same ones. */
function turnoutOf(kit: Kit, place: number): Turnout {
  const ids = kit.squad.map(({ playerId }) => playerId)
  const here = ids.filter((_, at) => (at + place) % 5 !== 4)
  return { here, sitsOut: [], guests: place % 3 === 1 ? ['RM'] : [], adults: place % 2 === 0 ? 2 : 1 }
}

function envelope(kind: string, date: KitDate) {
  const endsAt = date.startsAt + date.minutes * 60_000
  return { v: 1, id: demoId(kind, date.dateId), at: new Date(endsAt).toISOString(), zone: CLUB_ZONE } as const
}

function attendanceOf(kit: Kit, date: KitDate, turnout: Turnout): Operation {
  const marks = kit.squad.map(({ playerId }) => ({ playerId, came: turnout.here.includes(playerId) }))
  const body = { teamId: kit.team.teamId, dateId: date.dateId, marks }
  return { op: 'mark-attendance', ...envelope('attendance', date), body }
}

function planOperationOf(kit: Kit, date: KitDate, plan: SessionPlan): Operation {
  const inputs = canonicalJson({ kit, dateId: date.dateId } as unknown as PlainValue)
  const body = {
    teamId: kit.team.teamId,
    dateId: date.dateId,
    curriculumId: kit.adopted?.curriculumId ?? null,
    number: kit.adopted?.number ?? null,
    inputsHash: createHash('sha256').update(inputs).digest('hex'),
    plan,
  }
  return { op: 'keep-plan', ...envelope('plan', date), body }
}

function reportOf(kit: Kit, date: KitDate, plan: SessionPlan, evening: DemoEvening): Operation {
  const pattern = plan.activities.find(({ kind }) => kind === 'pattern')
  const stages =
    pattern === undefined || pattern.stageId === null
      ? []
      : [
          {
            stageId: pattern.stageId,
            pressureReached: pattern.pressure ?? 'none',
            minutes: pattern.minutes,
            gotOut: GOT_OUT[(evening.place + 1) % GOT_OUT.length]!,
          },
        ]
  const guests = plan.children.filter((id) => id.startsWith('guest:')).length
  const body = {
    teamId: kit.team.teamId,
    dateId: date.dateId,
    planId: envelope('plan', date).id,
    turnout: plan.children.length - guests,
    guests,
    minutes: date.minutes,
    stages,
    secondAdult: evening.place % 2 === 0 ? evening.secondAdult : null,
    changes: evening.place % 3 === 2 ? [{ stageId: stages[0]?.stageId ?? null, chip: 'shorter' as const }] : [],
    supersedes: null,
  }
  return { op: 'report-session', ...envelope('report', date), body }
}

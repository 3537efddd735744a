import { addDays, dayInZone, mondayOf } from '../clock/local-dates'
import { createClub } from '../features/clubs/create-club'
import { makeSignInSecret } from '../features/clubs/sign-in-address'
import { type Actor, type Stage, signInAs } from './actor'
import { reportEvening } from './evenings'
import { foundClub } from './found-club'
import { DEMO_CLUB_ID, demoId } from './ids'
import { ADMINISTRATOR, CLUB_NAME, CLUB_ZONE, PEOPLE, TEAMS, type TeamName } from './invented'
import { findBeginning, listDemoDates } from './queries'

const MINUTE_MILLISECONDS = 60_000
const DAY_MILLISECONDS = 86_400_000

/** Days of the season before the first start: the start's day can be read from the season it made. */
const SEASON_BEFORE = 42

/** Days of the demo, counted from the Monday of the week in which it was first made. */
const FOUNDED_BEFORE = 35
const ADOPTED_BEFORE = 28
const REPORTS_BEFORE = 21
const SEASON_AFTER = 98

/**
 * Makes the demo club by the same commands as any club, with a clock that walks through its past weeks. What an
 * interrupted run has done is replayed or left as it is; a club that is whole is not touched.
 */
export async function makeDemoClub(stage: Stage, clock: { now: number }): Promise<void> {
  const { exists, firstDay } = await findBeginning(stage.deps)
  const startDay = firstDay === null ? dayInZone(clock.now, CLUB_ZONE) : addDays(firstDay, SEASON_BEFORE)
  const monday = mondayOf(startDay)
  const evenings = await listEvenings(stage, monday)
  if (evenings.length > 0 && evenings.every(({ reported }) => reported)) return
  clock.now = Date.parse(`${monday}T09:00:00.000Z`) - FOUNDED_BEFORE * DAY_MILLISECONDS
  const administratorId = demoId('person', ADMINISTRATOR.key)
  if (!exists) await create(stage, administratorId)
  await foundClub(stage, administratorId, {
    startDay,
    firstDay: addDays(startDay, -SEASON_BEFORE),
    lastDay: addDays(monday, SEASON_AFTER - 1),
    adoptedFrom: addDays(monday, -ADOPTED_BEFORE),
  })
  await reportAll(stage, clock, monday)
}

async function create(stage: Stage, administratorId: string): Promise<void> {
  await createClub(stage.deps, {
    clubId: DEMO_CLUB_ID,
    name: CLUB_NAME,
    zone: CLUB_ZONE,
    demo: true,
    administratorId,
    administratorName: ADMINISTRATOR.name,
    linkTokenHash: makeSignInSecret().hash,
  })
}

type Evening = {
  readonly team: TeamName
  readonly dateId: string
  readonly place: number
  readonly reportedAt: number
  readonly reported: boolean
}

/** The evenings of three weeks, in the order in which their reports come in; one of them comes days late. */
async function listEvenings(stage: Stage, monday: string): Promise<readonly Evening[]> {
  const dates = await listDemoDates(stage.deps, addDays(monday, -REPORTS_BEFORE), monday)
  return TEAMS.flatMap(({ key }) =>
    dates
      .filter(({ team }) => team === key)
      .map(({ team, dateId, endsAt, reported }, place) => {
        const isLate = team === 'swifts' && place === 1
        const delay = isLate ? 3 * DAY_MILLISECONDS : 25 * MINUTE_MILLISECONDS
        return { team, dateId, place, reportedAt: endsAt + delay, reported }
      }),
  ).sort((a, b) => a.reportedAt - b.reportedAt)
}

async function reportAll(stage: Stage, clock: { now: number }, monday: string): Promise<void> {
  const evenings = (await listEvenings(stage, monday)).filter(({ reported }) => !reported)
  const coaches = new Map<TeamName, Actor>()
  for (const evening of evenings) {
    clock.now = evening.reportedAt
    const coach = coaches.get(evening.team) ?? (await signInAs(stage, personOf('coach', evening.team)!))
    coaches.set(evening.team, coach)
    await reportEvening({ ...evening, coach, secondAdult: personOf('assistant', evening.team) })
  }
}

function personOf(role: 'coach' | 'assistant', team: TeamName): string | null {
  const person = PEOPLE.find((one) => one.role === role && one.team === team)
  return person === undefined ? null : demoId('person', person.key)
}

import { paths, pathTo } from '@espalier/contract/paths'
import { DEMO_PATTERNS } from '../../../../prisma/demo/patterns'
import { addDays, weekdayOf } from '../clock/local-dates'
import { type Actor, type Stage, signInAs } from './actor'
import { DRAFTS } from './drafts'
import { DEMO_CLUB_ID, demoId } from './ids'
import { CLUB_STORE_COUNTS, type InventedTeam, LARKS_BAG_COUNTS, PEOPLE, SPACES, TEAMS } from './invented'

const clubId = DEMO_CLUB_ID
const PATTERN_KEYS = ['wall-on-the-right', 'round-the-back', 'carry-until-one-comes'] as const

export type DemoSeason = {
  readonly firstDay: string
  readonly lastDay: string
  readonly adoptedFrom: string
  /** The day of the first start, whose weekday is a training day. */
  readonly startDay: string
}

/** Everything up to the first evening, in the order in which a real club would do it. */
export async function foundClub(stage: Stage, administratorId: string, season: DemoSeason): Promise<void> {
  const administrator = await signInAs(stage, administratorId)
  await addPlaces(administrator, season)
  await addPeople(administrator)
  const director = await signInAs(stage, demoId('person', 'tarrow'))
  await addPatterns(director)
  for (const team of TEAMS) await publishAndAdopt(stage, director, team, season)
}

async function addPlaces(administrator: Actor, season: DemoSeason): Promise<void> {
  const { firstDay, lastDay } = season
  const seasonId = demoId('season')
  await administrator.send('POST', pathTo(paths.seasons, { clubId }), {
    id: seasonId,
    name: 'This season',
    firstDay,
    lastDay,
  })
  for (const [key, space] of Object.entries(SPACES))
    await administrator.send('POST', pathTo(paths.spaces, { clubId }), { id: demoId('space', key), space })
  for (const team of TEAMS) await addTeam(administrator, team, season)
  await countEquipment(administrator)
}

async function addTeam(administrator: Actor, team: InventedTeam, season: DemoSeason): Promise<void> {
  const teamId = demoId('team', team.key)
  const { name, ageGroup, formatId } = team
  const body = { id: teamId, seasonId: demoId('season'), name, ageGroup, category: 'mixed', formatId }
  await administrator.send('POST', pathTo(paths.teams, { clubId }), body)
  for (const { key, daysAfterStart, localStart, minutes } of team.slots) {
    await administrator.send('POST', pathTo(paths.slots, { clubId, teamId }), {
      id: demoId('slot', team.key, key),
      spaceId: demoId('space', team.space),
      weekday: weekdayOf(addDays(season.startDay, daysAfterStart)),
      localStart,
      minutes,
      validFrom: season.firstDay,
      validTo: season.lastDay,
    })
  }
  await administrator.send('POST', pathTo(paths.squadImports, { clubId, teamId }), {
    id: demoId('squad', team.key),
    players: team.children.map((shortName, at) => playerOf(team, shortName, at)),
  })
}

/** Homes follow the formation round the squad; every fourth child likes to go in goal. */
function playerOf(team: InventedTeam, shortName: string, at: number) {
  const pattern = DEMO_PATTERNS.find(({ formatId }) => formatId === team.formatId)!
  const positions = pattern.positions.map(({ position }) => position)
  const place = (step: number) => positions[step % positions.length]!
  return {
    id: demoId('player', team.key, shortName),
    shortName,
    shirt: at + 1,
    home: place(at),
    stretch: place(at + 3),
    goalkeeper: at % 4 === 0 ? 'yes' : at % 4 === 1 ? 'sometimes' : 'no',
    foot: at % 3 === 0 ? 'left' : 'right',
  }
}

async function countEquipment(administrator: Actor): Promise<void> {
  const path = pathTo(paths.equipment, { clubId })
  await administrator.send('POST', path, { id: demoId('store'), teamId: null, counts: CLUB_STORE_COUNTS }, 0)
  const bag = { id: demoId('bag'), teamId: demoId('team', 'larks'), counts: LARKS_BAG_COUNTS }
  await administrator.send('POST', path, bag, 0)
}

async function addPeople(administrator: Actor): Promise<void> {
  for (const { key, name, role, team } of PEOPLE) {
    await administrator.send('POST', pathTo(paths.people, { clubId }), {
      id: demoId('person', key),
      displayName: name,
      roles: [{ role, teamId: team === null ? null : demoId('team', team) }],
    })
  }
}

async function addPatterns(director: Actor): Promise<void> {
  for (const [at, document] of DEMO_PATTERNS.entries())
    await director.send('POST', pathTo(paths.patterns, { clubId }), {
      id: demoId('pattern', PATTERN_KEYS[at]!),
      document,
    })
}

/** Written and published by the director, taken up by the team's own coach. */
async function publishAndAdopt(stage: Stage, director: Actor, team: InventedTeam, season: DemoSeason): Promise<void> {
  const curriculumId = demoId('curriculum', team.key)
  const document = DRAFTS[team.key]
  await director.send('POST', pathTo(paths.curricula, { clubId }), { id: curriculumId, document })
  const publication = { id: demoId('publication', team.key) }
  await director.send('POST', pathTo(paths.versions, { clubId, curriculumId }), publication, 1)
  const coachKey = PEOPLE.find((person) => person.role === 'coach' && person.team === team.key)!.key
  const coach = await signInAs(stage, demoId('person', coachKey))
  await coach.send('POST', pathTo(paths.adoptions, { clubId, teamId: demoId('team', team.key) }), {
    id: demoId('adoption', team.key),
    curriculumId,
    number: 1,
    fromDate: season.adoptedFrom,
  })
}

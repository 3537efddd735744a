import { paths, pathTo } from '@espalier/contract/paths'
import { kit } from '@espalier/contract/sessions'
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { ORIGIN, testApi } from '../../../../tests/factories/api'
import { signInAs } from './actor'
import { DEMO_CLUB_ID, demoId } from './ids'
import { makeDemoClub } from './make-demo-club'

const api = await testApi()
const stage = { app: api.app, deps: api.deps, origin: ORIGIN }
const clubId = DEMO_CLUB_ID
const FIRST_START = Date.parse('2026-09-16T12:00:00.000Z')

test('the demo club is made once, through the commands, and a second start changes nothing', async () => {
  api.clock.now = FIRST_START
  await makeDemoClub(stage, api.clock)
  api.clock.now = FIRST_START
  const auditor = await signInAs(stage, demoId('person', 'wray'))
  const head = (await auditor.get(pathTo(paths.ledgerHead, { clubId }))) as { size: number }
  await makeDemoClub(stage, api.clock)
  expect(await auditor.get(pathTo(paths.ledgerHead, { clubId }))).toEqual(head)

  const { teams } = (await auditor.get(pathTo(paths.teams, { clubId }))) as {
    teams: { name: string; follows: unknown }[]
  }
  expect(teams.map(({ name }) => name)).toEqual(['U10 Larks', 'U12 Swifts'])
  expect(teams.every(({ follows }) => follows !== null)).toBe(true)

  const coach = await signInAs(stage, demoId('person', 'linden'))
  const found = z.parse(kit, await coach.get(pathTo(paths.kit, { clubId, teamId: demoId('team', 'larks') })))
  expect(found.club.demo).toBe(true)
  expect(found.squad).toHaveLength(12)
  // Whoever tries the demo has an evening to plan on the very day of the first start.
  expect(found.dates.map(({ localDate }) => localDate)).toContain('2026-09-16')
  expect(found.squad.some(({ past }) => past.blocks > 0)).toBe(true)
  expect(found.progress.length).toBeGreaterThan(0)

  const path = pathTo(paths.coverage, { clubId }, { seasonId: demoId('season') })
  const coverage = (await auditor.get(path)) as {
    cells: { doneMinutes: number; plannedMinutes: number; late: number }[]
  }
  expect(coverage.cells.some((cell) => cell.doneMinutes > 0 && cell.plannedMinutes > 0)).toBe(true)
  expect(coverage.cells.some((cell) => cell.late > 0)).toBe(true)
})

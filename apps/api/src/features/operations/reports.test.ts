import { paths, pathTo } from '@espalier/contract/paths'
import type { OperationResult } from '@espalier/contract/records'
import { expect, test } from 'vitest'
import { SEPTEMBER, testApi } from '../../../../../tests/factories/api'
import { makeFurnishedClub, reportOf } from '../../../../../tests/factories/furnished-club'
import type { Person } from '../../../../../tests/factories/person'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()
const club = await makeFurnishedClub(api)
const { clubId, stageId } = club
const [team, otherTeam] = club.teams

async function send(person: Person, report: ReturnType<typeof reportOf>): Promise<OperationResult> {
  const answer = await person.send('POST', pathTo(paths.operations, { clubId }), { operations: [report] })
  return answer.json.results[0]
}

async function standings(dateId: string): Promise<ReadonlyMap<string, string>> {
  const text = 'select record_id, standing from record where date_id = $1'
  const rows = await asOwner<{ record_id: string; standing: string }>(database, text, [dateId])
  return new Map(rows.map((row) => [row.record_id, row.standing]))
}

test('no evening is reported before it begins; from its first instant on it may be', async () => {
  const dateId = team.dateIds[3]!
  const text = 'select starts_at from training_date where date_id = $1'
  const begins = (await asOwner<{ starts_at: Date }>(database, text, [dateId]))[0]!.starts_at.getTime()
  api.clock.now = begins - 1
  const early = await send(team.coach.person, reportOf(team, [stageId], { dateId }))
  expect(early).toMatchObject({
    status: 'refused',
    problem: { code: 'evening-not-begun', errors: [{ pointer: '/body/dateId' }] },
  })
  api.clock.now = begins
  expect((await send(team.coach.person, reportOf(team, [stageId], { dateId }))).status).toBe('applied')
  api.clock.now = SEPTEMBER
})

test.each(['cancelled', 'moved'])('an evening that is %s is not reported', async (state) => {
  const dateId = otherTeam.dateIds[1]!
  await asOwner(database, 'update training_date set state = $2 where date_id = $1', [dateId, state])
  const refused = await send(otherTeam.coach.person, reportOf(otherTeam, [], { dateId }))
  expect(refused).toMatchObject({ status: 'refused', problem: { code: 'evening-not-on' } })
  await asOwner(database, "update training_date set state = 'on' where date_id = $1", [dateId])
})

test("an assistant's correction of the coach's report stands beside it; the author's and the coach's take its place", async () => {
  const dateId = team.dateIds[0]!
  const byCoach = reportOf(team, [stageId], { dateId })
  const emptied = reportOf(team, [], { dateId, turnout: 0, minutes: 0, supersedes: byCoach.id })
  expect((await send(team.coach.person, byCoach)).status).toBe('applied')
  expect((await send(team.assistant.person, emptied)).status).toBe('applied')
  expect(await standings(dateId)).toEqual(
    new Map([
      [byCoach.id, 'stands'],
      [emptied.id, 'rival'],
    ]),
  )
  const own = reportOf(team, [], { dateId, turnout: 5, supersedes: emptied.id })
  expect((await send(team.assistant.person, own)).status).toBe('applied')
  const settled = reportOf(team, [stageId], { dateId, turnout: 6, supersedes: own.id })
  expect((await send(team.coach.person, settled)).status).toBe('applied')
  expect(await standings(dateId)).toEqual(
    new Map([
      [byCoach.id, 'stands'],
      [emptied.id, 'superseded'],
      [own.id, 'superseded'],
      [settled.id, 'rival'],
    ]),
  )
})

test('a second adult who had left the club before the evening is refused; one who left after it is not', async () => {
  const dateId = team.dateIds[1]!
  const leave = (at: string) =>
    asOwner(database, 'update membership set ended_at = $2 where member_id = $1', [club.left.memberId, at])
  const report = () => reportOf(team, [], { dateId, secondAdult: club.left.memberId })
  await leave('2026-09-07T12:00:00Z')
  expect(await send(team.coach.person, report())).toMatchObject({
    status: 'refused',
    problem: { code: 'reference-unknown', errors: [{ pointer: '/body/secondAdult' }] },
  })
  await leave('2026-09-09T12:00:00Z')
  expect((await send(team.coach.person, report())).status).toBe('applied')
})

test('the record book says of a plan that the club never saw that it was not seen', async () => {
  const report = reportOf(otherTeam, [], { dateId: otherTeam.dateIds[0], planId: freshId() })
  const result = await send(otherTeam.coach.person, report)
  expect(result.status).toBe('applied')
  const text = "select body::jsonb -> 'facts' as facts from ledger_entry where entry_id = $1"
  const rows = await asOwner<{ facts: Record<string, unknown> }>(database, text, [result.entry])
  expect(rows[0]!.facts).toMatchObject({ plan: report.body.planId, planSeen: false })
})

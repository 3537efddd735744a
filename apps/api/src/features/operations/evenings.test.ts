import { paths, pathTo } from '@espalier/contract/paths'
import { kit as kitShape } from '@espalier/contract/sessions'
import { millimetres } from '@espalier/domain/quantities'
import { type Kit, planEvening, type SessionPlan } from '@espalier/domain/session'
import { beforeEach, describe, expect, test } from 'vitest'
import * as z from 'zod/mini'
import { SEPTEMBER, testApi } from '../../../../../tests/factories/api'
import { addMember } from '../../../../../tests/factories/club'
import {
  type FurnishedClub,
  makeFurnishedClub,
  reportOf,
  sha256Hex,
} from '../../../../../tests/factories/furnished-club'
import type { Person } from '../../../../../tests/factories/person'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()
const club = await makeFurnishedClub(api)
const { clubId, stageId } = club
const [team, otherTeam] = club.teams
const coach = team.coach.person
const path = pathTo(paths.operations, { clubId })

beforeEach(() => {
  api.clock.now = SEPTEMBER
})

async function send(person: Person, ...operations: readonly unknown[]) {
  const answer = await person.send('POST', path, { operations })
  expect(answer.status).toBe(200)
  return answer.json.results as readonly {
    id: string | null
    status: string
    entry: string | null
    problem: { code: string; errors: { pointer: string }[] } | null
  }[]
}

async function findKit(): Promise<Kit> {
  return z.parse(kitShape, (await coach.get(pathTo(paths.kit, { clubId, teamId: team.teamId }))).json)
}

function operationOf(op: string, body: unknown) {
  return { op, v: 1, id: freshId(), at: '2026-09-15T18:00:00.000Z', zone: 'Europe/London', body }
}

describe('a batch of operations', () => {
  test('gives each its own result: a bad one holds up none of the others, and is kept', async () => {
    const good = operationOf('mark-attendance', {
      teamId: team.teamId,
      dateId: team.dateIds[2],
      marks: [{ playerId: team.playerId, came: true }],
    })
    const unknownStage = reportOf(team, [freshId()], { dateId: team.dateIds[2] })
    const results = await send(coach, { op: 'juggle', id: freshId() }, 'no object', unknownStage, good)
    expect(results.map(({ status }) => status)).toEqual(['refused', 'refused', 'refused', 'applied'])
    expect(results[1]!.id).toBeNull()
    expect(results[2]!.problem).toMatchObject({
      code: 'stage-unknown',
      errors: [{ pointer: '/body/stages/0/stageId' }],
    })
    expect(results[3]!.entry).toBeNull()
    const kept = await asOwner<{ code: string; text: string }>(
      database,
      "select code, encode(sealed_body, 'escape') as text from refused where operation_id = $1",
      [unknownStage.id],
    )
    expect(kept).toMatchObject([{ code: 'stage-unknown' }])
    expect(kept[0]!.text).not.toContain('stages')
    expect((await send(coach, good))[0]).toMatchObject({ status: 'replayed' })
    const changed = { ...good, body: { ...(good.body as object), marks: [{ playerId: team.playerId, came: false }] } }
    expect((await send(coach, changed))[0]!.problem!.code).toBe('key-used-for-another-command')
  })

  test('holds one to two hundred', async () => {
    const many = Array.from({ length: 201 }, () => 0)
    for (const operations of [[], many]) {
      const answer = await coach.send('POST', path, { operations })
      expect(answer.json).toMatchObject({ status: 400, errors: [{ pointer: '/operations' }] })
    }
  })

  test('of another team is hidden like one of a team that does not exist', async () => {
    const [other] = await send(coach, reportOf(otherTeam, []))
    const [none] = await send(coach, reportOf({ ...otherTeam, teamId: freshId() }, []))
    expect(other!.problem).toEqual(none!.problem)
    expect(other!.problem!.code).toBe('not-found')
  })

  test('of who may write no operation at all is refused as a whole', async () => {
    const operations = [reportOf(team, [])]
    expect((await club.auditor.person.send('POST', path, { operations })).json).toMatchObject({ status: 403 })
    expect((await club.director.person.send('POST', path, { operations })).json).toMatchObject({ status: 403 })
  })
})

describe('who came', () => {
  test('the last mark by the order of the server holds, the earlier one is kept', async () => {
    const mark = (came: boolean) =>
      operationOf('mark-attendance', {
        teamId: team.teamId,
        dateId: team.dateIds[1],
        marks: [{ playerId: team.playerId, came }],
      })
    await send(coach, mark(true), mark(true), mark(false))
    const values = [team.dateIds[1], team.playerId]
    expect(
      await asOwner(database, 'select came from attendance where date_id = $1 and player_id = $2', values),
    ).toEqual([{ came: false }])
    expect(
      await asOwner(database, 'select came from attendance_past where date_id = $1 and player_id = $2', values),
    ).toEqual([{ came: true }])
  })

  test('names a date of the team and children of the squad', async () => {
    const marks = [{ playerId: otherTeam.playerId, came: true }]
    const [child, date] = await send(
      coach,
      operationOf('mark-attendance', { teamId: team.teamId, dateId: team.dateIds[1], marks }),
      operationOf('mark-attendance', { teamId: team.teamId, dateId: otherTeam.dateIds[1], marks }),
    )
    expect(child!.problem).toMatchObject({ code: 'player-unknown', errors: [{ pointer: '/body/marks/0/playerId' }] })
    expect(date!.problem).toMatchObject({ code: 'date-unknown', errors: [{ pointer: '/body/dateId' }] })
  })
})

describe('a plan', () => {
  async function planTonight(
    guests: readonly string[] = [],
  ): Promise<{ kit: Kit; plan: SessionPlan; body: Record<string, unknown> }> {
    const kit = await findKit()
    const date = kit.dates.find(({ dateId }) => dateId === team.dateIds[3])!
    const space = kit.spaces.find(({ spaceId }) => spaceId === date.spaceId)!.space
    const turnout = { here: kit.squad.map(({ playerId }) => playerId), sitsOut: [], guests, adults: 1 }
    const plan = planEvening({ kit, date, turnout, space, paceMm: millimetres(800) })
    const { curriculumId, number } = kit.adopted!
    const inputsHash = sha256Hex('inputs')
    return { kit, plan, body: { teamId: team.teamId, dateId: date.dateId, curriculumId, number, inputsHash, plan } }
  }

  test('computed from the kit is kept, guests without their initials, and its line-ups count for the next kit', async () => {
    const { plan, body } = await planTonight(['ZQ'])
    const kept = operationOf('keep-plan', body)
    const [result] = await send(coach, kept)
    expect(result).toMatchObject({ status: 'applied', problem: null })
    const rows = await asOwner<{ text: string }>(database, 'select doc::text as text from plan where plan_id = $1', [
      kept.id,
    ])
    expect(rows[0]!.text).not.toContain('ZQ')
    expect(rows[0]!.text).toContain('guest:1')

    api.clock.now = SEPTEMBER + 8 * 86_400_000
    const report = reportOf(team, [stageId], { dateId: team.dateIds[3], planId: kept.id })
    expect((await send(coach, report))[0]).toMatchObject({ status: 'applied' })
    const blocks = plan.activities.flatMap(({ lineups }) => lineups?.blocks ?? [])
    const places = blocks.flatMap(({ places: all }) => all.map(({ childId }) => childId))
    const after = await findKit()
    for (const child of after.squad) expect(child.past.blocks).toBe(places.filter((id) => id === child.playerId).length)
    expect(after.progress).toMatchObject([{ stageId, sessions: 1, lastDate: '2026-09-22', attemptsLeft: 0 }])
  })

  test('that breaks what every plan keeps is refused where it breaks', async () => {
    const { plan, body } = await planTonight()
    const wide = plan.activities.map((activity, at) =>
      at === 0 ? { ...activity, areas: activity.areas.map((area) => ({ ...area, widthMm: 90_000 })) } : activity,
    )
    const longer = { ...plan, totalMinutes: 90 }
    const [area, minutes, version] = await send(
      coach,
      operationOf('keep-plan', { ...body, plan: { ...plan, activities: wide } }),
      operationOf('keep-plan', { ...body, plan: longer }),
      operationOf('keep-plan', { ...body, curriculumId: freshId() }),
    )
    expect(area!.problem).toMatchObject({ code: 'plan-does-not-hold' })
    expect(area!.problem!.errors[0]!.pointer).toBe('/body/plan/activities/0/areas/0')
    expect(minutes!.problem!.errors.map(({ pointer }) => pointer)).toContain('/body/plan/totalMinutes')
    expect(version!.problem!.code).toBe('stage-unknown')
  })
})

describe('a report', () => {
  test('stands, is late after two days, is corrected by its own author, and has a rival in a second person', async () => {
    const date = { dateId: team.dateIds[1] }
    const first = reportOf(team, [stageId], date)
    expect((await send(coach, first))[0]).toMatchObject({ status: 'applied' })
    expect((await send(coach, reportOf(team, [stageId], date)))[0]!.problem!.code).toBe('report-stands-already')
    const rival = reportOf(team, [stageId], { ...date, turnout: 3 })
    expect((await send(team.assistant.person, rival))[0]).toMatchObject({ status: 'applied' })
    const correction = reportOf(team, [stageId], { ...date, turnout: 7, supersedes: first.id })
    expect((await send(coach, correction))[0]).toMatchObject({ status: 'applied' })
    const fork = reportOf(team, [stageId], { ...date, supersedes: first.id })
    expect((await send(coach, fork))[0]!.problem).toMatchObject({
      code: 'report-stands-already',
      errors: [{ pointer: '/body/supersedes' }],
    })

    const { records } = (await coach.get(pathTo(paths.teamRecords, { clubId, teamId: team.teamId }))).json
    const ofDate = records.filter(({ dateId }: { dateId: string }) => dateId === team.dateIds[1])
    expect(
      ofDate.map((row: { recordId: string; standing: string; late: boolean }) => [
        row.recordId,
        row.standing,
        row.late,
      ]),
    ).toEqual([
      [correction.id, 'stands', true],
      [rival.id, 'rival', true],
      [first.id, 'superseded', true],
    ])
    const one = (await coach.get(pathTo(paths.record, { clubId, recordId: correction.id }))).json
    expect(one).toMatchObject({ turnout: 7, author: expect.stringContaining('Coach of'), secondAdult: null })
  })

  test('of one evening by two people at once: one stands, one is the rival', async () => {
    const date = { dateId: team.dateIds[2] }
    const people = [coach, team.assistant.person]
    await Promise.all(people.map((person) => send(person, reportOf(team, [stageId], date))))
    const rows = await asOwner(database, 'select standing from record where date_id = $1 order by standing', [
      team.dateIds[2],
    ])
    expect(rows).toEqual([{ standing: 'rival' }, { standing: 'stands' }])
  })

  test('names a second adult of the club who is somebody else', async () => {
    const date = { dateId: team.dateIds[0] }
    const [nobody, self, good] = await send(
      coach,
      reportOf(team, [], { ...date, secondAdult: freshId() }),
      reportOf(team, [], { ...date, secondAdult: team.coach.memberId }),
      reportOf(team, [], { ...date, secondAdult: team.assistant.memberId }),
    )
    expect(nobody!.problem).toMatchObject({ code: 'reference-unknown', errors: [{ pointer: '/body/secondAdult' }] })
    expect(self!.problem).toMatchObject({ code: 'bad-request', errors: [{ pointer: '/body/secondAdult' }] })
    expect(good!.status).toBe('applied')
  })

  test('of a team that follows nothing can name no stage', async () => {
    const { makeClub, addSeason, addTeam } = await import('../../../../../tests/factories/club')
    const bare = await makeClub(api)
    const teamId = await addTeam(bare, await addSeason(bare))
    const slot = {
      id: freshId(),
      spaceId: null,
      weekday: 2,
      localStart: '17:30',
      minutes: 60,
      validFrom: '2026-09-01',
      validTo: '2026-09-20',
    }
    await bare.administrator.send('POST', pathTo(paths.slots, { clubId: bare.clubId, teamId }), slot)
    const member = await addMember(bare, [{ role: 'coach', teamId }])
    const { dates } = (await bare.administrator.get(pathTo(paths.dates, { clubId: bare.clubId, teamId }))).json
    const bareTeam = { ...team, teamId, dateIds: [dates[0].dateId] }
    const operations = [reportOf(bareTeam, [freshId()]), reportOf(bareTeam, [])]
    const answer = await member.person.send('POST', pathTo(paths.operations, { clubId: bare.clubId }), { operations })
    expect(answer.json.results[0].problem.code).toBe('nothing-adopted')
    expect(answer.json.results[1].status).toBe('applied')
    const found = z.parse(kitShape, (await member.person.get(pathTo(paths.kit, { clubId: bare.clubId, teamId }))).json)
    expect(found.adopted).toBeNull()
  })
})

describe('the kit', () => {
  test('holds the last date and those of the next two weeks, and answers 304 while nothing changed', async () => {
    const kitPath = pathTo(paths.kit, { clubId, teamId: otherTeam.teamId })
    const first = await otherTeam.coach.person.get(kitPath)
    expect(first.json.dates.map(({ localDate }: { localDate: string }) => localDate)).toEqual([
      '2026-09-08',
      '2026-09-15',
      '2026-09-22',
      '2026-09-29',
    ])
    const etag = String(first.headers.etag)
    const again = await otherTeam.coach.person.get(kitPath, { 'if-none-match': etag })
    expect([again.status, again.text]).toEqual([304, ''])
    const counts = { cone: 1, pole: 0, 'small-goal': 0, ball: 0, bib: 0 }
    const counted = { id: freshId(), teamId: otherTeam.teamId, counts }
    await club.administrator.send('POST', pathTo(paths.equipment, { clubId }), counted, { fromVersion: 0 })
    const changed = await otherTeam.coach.person.get(kitPath, { 'if-none-match': etag })
    expect(changed.status).toBe(200)
    expect(changed.json.equipment).toEqual(counts)
  })

  test('is made once while the record book stands still: then the login and who asks are all that is looked up', async () => {
    const kitPath = pathTo(paths.kit, { clubId, teamId: otherTeam.teamId })
    const first = await countStatements(() => otherTeam.coach.person.get(kitPath))
    const again = await countStatements(() => otherTeam.coach.person.get(kitPath))
    expect([first.statements <= 4, again.statements]).toEqual([true, 2])
    expect(again.answer.text).toBe(first.answer.text)
  })

  test('changes with the clock though nobody does anything: a date that ends, one that comes near, another day', async () => {
    const kitPath = pathTo(paths.kit, { clubId, teamId: otherTeam.teamId })
    const datesAt = async (instant: string) => {
      api.clock.now = Date.parse(instant)
      const { dates } = (await otherTeam.coach.person.get(kitPath)).json
      return [dates.length, dates[0].localDate, dates.at(-1).localDate]
    }
    expect(await datesAt('2026-09-15T17:44:59.999Z')).toEqual([4, '2026-09-08', '2026-09-29'])
    expect(await datesAt('2026-09-15T17:45:00.000Z')).toEqual([3, '2026-09-15', '2026-09-29'])
    expect(await datesAt('2026-09-22T16:29:59.999Z')).toEqual([3, '2026-09-15', '2026-09-29'])
    expect(await datesAt('2026-09-22T16:30:00.000Z')).toEqual([4, '2026-09-15', '2026-10-06'])
    expect(await datesAt('2026-09-15T17:44:59.999Z')).toEqual([4, '2026-09-08', '2026-09-29'])
  })

  test('a role that is taken away ends the kit at once, made before or not', async () => {
    const { person, memberId } = await addMember(club, [{ role: 'assistant', teamId: otherTeam.teamId }])
    const kitPath = pathTo(paths.kit, { clubId, teamId: otherTeam.teamId })
    expect((await person.get(kitPath)).status).toBe(200)
    const moved = { displayName: 'Moved', roles: [{ role: 'assistant', teamId: team.teamId }], left: false }
    await club.administrator.send('PUT', pathTo(paths.person, { clubId, memberId }), moved, { fromVersion: 1 })
    expect((await person.get(kitPath)).status).toBe(404)
  })
})

/** How many statements an answer cost, those that only open and close the transaction apart. */
async function countStatements<Value>(work: () => Promise<Value>): Promise<{ statements: number; answer: Value }> {
  const client = await api.deps.pools.app.connect()
  const prototype = Object.getPrototypeOf(client) as { query: (...args: unknown[]) => unknown }
  client.release()
  const original = prototype.query
  let statements = 0
  prototype.query = function count(this: unknown, ...args: unknown[]) {
    const [statement] = args as [string | { text: string }]
    if (!/^(begin|commit|set|rollback)/i.test(typeof statement === 'string' ? statement : statement.text))
      statements += 1
    return original.apply(this, args)
  }
  try {
    return { answer: await work(), statements }
  } finally {
    prototype.query = original
  }
}

describe('planned and done', () => {
  test('compares each cell with the reports behind it; superseded and rival ones count nothing', async () => {
    const coverage = await cellsOf(club)
    const done = coverage.cells.filter(({ teamId, doneMinutes }) => teamId === team.teamId && doneMinutes > 0)
    expect(done.length).toBeGreaterThan(1)
    expect(done.every(({ records, doneMinutes }) => records === 1 && doneMinutes === 20)).toBe(true)
    const { week } = done[0]!
    const query = { seasonId: club.seasonId, teamId: team.teamId, stageId, week }
    const cell = (await club.auditor.person.get(pathTo(paths.coverageCell, { clubId }, query))).json
    expect(cell.records).toHaveLength(1)
    expect(cell.records[0]).toMatchObject({ standing: 'stands', teamId: team.teamId })
    const nothing = pathTo(paths.coverageCell, { clubId }, { ...query, week: '2026-12-14', stageId: freshId() })
    expect((await club.auditor.person.get(nothing)).status).toBe(404)
  })

  test('shows a coach the own team only', async () => {
    const path = pathTo(paths.coverage, { clubId }, { seasonId: club.seasonId })
    const own = (await coach.get(path)).json
    expect(own.teams.map(({ teamId }: { teamId: string }) => teamId)).toEqual([team.teamId])
    expect(new Set(own.cells.map(({ teamId }: { teamId: string }) => teamId))).toEqual(new Set([team.teamId]))
  })
})

async function cellsOf(of: FurnishedClub) {
  const path = pathTo(paths.coverage, { clubId: of.clubId }, { seasonId: of.seasonId })
  return (await of.auditor.person.get(path)).json as {
    cells: { teamId: string; stageId: string; week: string; doneMinutes: number; records: number }[]
  }
}

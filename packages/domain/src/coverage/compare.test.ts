import fc from 'fast-check'
import { expect, test } from 'vitest'
import { comparePlannedAndDone, type DoneRow, isLate, type PlannedRow } from './compare'

const key = { teamId: 't', stageId: 's', week: '2026-09-07' }

test('a cell shows the plan that holds, the first plan, what was done and how much of it came late', () => {
  const planned: PlannedRow[] = [
    { ...key, minutes: 20, first: true, holds: false },
    { ...key, minutes: 25, first: false, holds: true },
  ]
  const done: DoneRow[] = [
    { ...key, recordId: 'r1', minutes: 15, late: true },
    { ...key, recordId: 'r2', minutes: 10, late: false },
  ]
  expect(comparePlannedAndDone(planned, done)).toEqual([
    { ...key, plannedMinutes: 25, firstPlannedMinutes: 20, doneMinutes: 25, records: 2, late: 1 },
  ])
})

test('what was done without a plan has a cell, and so has what was planned and never done', () => {
  const cells = comparePlannedAndDone(
    [{ ...key, minutes: 20, first: true, holds: true }],
    [{ ...key, stageId: 'other', recordId: 'r', minutes: 5, late: false }],
  )
  expect(cells.map(({ stageId, plannedMinutes, doneMinutes }) => [stageId, plannedMinutes, doneMinutes])).toEqual([
    ['other', 0, 5],
    ['s', 20, 0],
  ])
})

test('no minute is lost or counted twice, in whatever order the rows come', () => {
  const word = fc.constantFrom('a', 'b', 'c')
  const cell = fc.record({ teamId: word, stageId: word, week: fc.constantFrom('2026-09-07', '2026-09-14') })
  const plannedRow = fc
    .tuple(cell, fc.nat(90), fc.boolean(), fc.boolean())
    .map(([of, minutes, first, holds]): PlannedRow => ({ ...of, minutes, first, holds }))
  const doneRow = fc
    .tuple(cell, fc.nat(90), fc.uuid())
    .map(([of, minutes, recordId]): DoneRow => ({ ...of, minutes, recordId, late: false }))
  fc.assert(
    fc.property(fc.array(plannedRow), fc.array(doneRow), (planned, done) => {
      const cells = comparePlannedAndDone(planned, done)
      const sum = (numbers: readonly number[]) => numbers.reduce((a, b) => a + b, 0)
      expect(sum(cells.map((one) => one.plannedMinutes))).toBe(
        sum(planned.filter((one) => one.holds).map((one) => one.minutes)),
      )
      expect(sum(cells.map((one) => one.firstPlannedMinutes))).toBe(
        sum(planned.filter((one) => one.first).map((one) => one.minutes)),
      )
      expect(sum(cells.map((one) => one.doneMinutes))).toBe(sum(done.map((one) => one.minutes)))
      expect(comparePlannedAndDone([...planned].reverse(), [...done].reverse())).toEqual(cells)
    }),
  )
})

test('a report is late when more than 48 hours have passed since the evening ended', () => {
  const hours = (count: number) => count * 3_600_000
  expect([isLate(0, hours(48)), isLate(0, hours(48) + 1)]).toEqual([false, true])
})

import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { changeEvening, type EveningChange, eveningShape, newEvening, turnoutOf } from './evening'
import { exampleKit } from './kit.fixture'

const kit = exampleKit
const [date] = kit.dates
if (date === undefined) throw new Error('the example kit holds an evening')
const start = newEvening(kit, date)
const [ada, ben] = kit.squad.map((member) => member.playerId) as [string, string]

function after(...changes: readonly EveningChange[]) {
  return changes.reduce(changeEvening, start)
}

test('everybody is here until struck out, on the space of the training slot', () => {
  expect(turnoutOf(start, kit).here).toHaveLength(kit.squad.length)
  expect(start.spaceId).toBe(date.spaceId)
})

test('one tap strikes a child out, a second brings the child back', () => {
  const out = after({ kind: 'come-or-not', playerId: ada })
  expect(turnoutOf(out, kit).here).not.toContain(ada)
  expect(turnoutOf(changeEvening(out, { kind: 'come-or-not', playerId: ada }), kit)).toEqual(turnoutOf(start, kit))
})

test('who goes home does not sit out any more, and who sits out has come', () => {
  const gone = after({ kind: 'sits-out', playerId: ada }, { kind: 'come-or-not', playerId: ada })
  expect(turnoutOf(gone, kit).sitsOut).toEqual([])
  const back = changeEvening(gone, { kind: 'sits-out', playerId: ada })
  expect(turnoutOf(back, kit)).toMatchObject({ sitsOut: [ada] })
  expect(turnoutOf(back, kit).here).toContain(ada)
})

test('a guest is initials only: no spaces, at most eight signs, never an empty one', () => {
  const guests = after(
    { kind: 'add-guest', initials: ' m. k. ' },
    { kind: 'add-guest', initials: 'maximiliana' },
    { kind: 'add-guest', initials: '  ' },
  ).guests
  expect(guests).toEqual(['MK', 'MAXIMILI'])
})

test('of two guests with equal initials one can go', () => {
  const two = after({ kind: 'add-guest', initials: 'MK' }, { kind: 'add-guest', initials: 'MK' })
  expect(changeEvening(two, { kind: 'remove-guest', at: 0 }).guests).toEqual(['MK'])
})

test('another space starts the set-out again; the same one does not', () => {
  const walked = after({ kind: 'put-down', stops: 5 })
  expect(changeEvening(walked, { kind: 'space', spaceId: start.spaceId ?? '' }).putDown).toBe(5)
  expect(changeEvening(walked, { kind: 'space', spaceId: 'another' }).putDown).toBe(0)
})

test('a child who left the squad meanwhile is in no turnout', () => {
  const smaller = { ...kit, squad: kit.squad.filter((member) => member.playerId !== ben) }
  const turnout = turnoutOf(after({ kind: 'sits-out', playerId: ben }), smaller)
  expect(turnout.here).not.toContain(ben)
  expect(turnout.sitsOut).toEqual([])
})

test('a plan the club did not take is sent again when it is used', () => {
  const kept = after({ kind: 'plan-kept', planId: 'p1', inputsHash: 'h1' })
  expect(kept.kept).toEqual({ planId: 'p1', inputsHash: 'h1' })
  expect(changeEvening(kept, { kind: 'plan-refused' }).kept).toBeNull()
})

test('an evening reads again as it was kept', () => {
  const kept = after({ kind: 'come-or-not', playerId: ada }, { kind: 'plan-kept', planId: 'p1', inputsHash: 'h1' })
  expect(z.parse(eveningShape, structuredClone(kept))).toEqual(kept)
})

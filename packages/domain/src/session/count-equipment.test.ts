import { expect, test } from 'vitest'
import { millimetres } from '../quantities'
import { countEquipment } from './count-equipment'
import { plainSpace } from './kit.fixture'
import { setOutWalk } from './set-out'
import type { SetOutItem } from './set-out-items'

function item(kind: SetOutItem['item'], upMm: number, activityId: string): SetOutItem {
  const at = { upMm: millimetres(upMm), rightMm: millimetres(0) }
  return { item: kind, ...at, purpose: '', mouth: null, activityIds: [activityId] }
}

const items = [
  item('cone', 2000, 'game'),
  item('cone', 4000, 'rondo'),
  item('pole', 6000, 'game'),
  item('cone', 20_000, 'game'),
]
const { stops } = setOutWalk(items, plainSpace(30, 30), millimetres(800))
const nothing = { cone: 0, pole: 0, 'small-goal': 0, ball: 0, bib: 0 }
const rondos = new Set(['rondo'])

test('with everything there nothing stands in', () => {
  const counted = countEquipment(stops, 4, 2, { cone: 3, pole: 1, 'small-goal': 0, ball: 2, bib: 6 }, rondos)
  expect(counted.short).toEqual(nothing)
  expect(counted.substitutes).toEqual([])
  expect(counted.notes).toEqual([])
})

test('a cone stands for a pole, then bibs for cones, a rondo corner first; the teams keep their bibs', () => {
  const counted = countEquipment(stops, 4, 2, { cone: 3, pole: 0, 'small-goal': 0, ball: 2, bib: 5 }, rondos)
  expect(counted.substitutes).toEqual([
    { item: 'pole', instead: 'cone', count: 1 },
    { item: 'cone', instead: 'bib', count: 1 },
  ])
  expect(counted.stops.filter((stop) => stop.instead === 'bib').map((stop) => stop.activityIds)).toEqual([['rondo']])
  expect(counted.notes.map((note) => note.sentence)).toEqual(['1 pole short: use cones.', '1 cone short: use bibs.'])
})

test('what nothing can stand in for is said', () => {
  const counted = countEquipment(stops, 4, 2, nothing, rondos)
  expect(counted.notes.map((note) => note.code)).toEqual(['equipment-instead', 'equipment-short', 'bibs-short'])
})

test('a long leg keeps its bib only while there is one', () => {
  // The walker stands at 6.4 m after eight paces; the last stop is 17 paces on, half-way is after eight.
  const legsOf = (bibs: number) =>
    countEquipment(stops, 0, 0, { cone: 4, pole: 1, 'small-goal': 0, ball: 0, bib: bibs }, rondos).stops.flatMap(
      (stop) => stop.legs,
    )
  expect(legsOf(1).map((leg) => leg.bibAfterPaces)).toContain(8)
  expect(legsOf(0).every((leg) => leg.bibAfterPaces === null)).toBe(true)
})

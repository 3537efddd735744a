import { describe, expect, test } from 'vitest'
import { millimetres } from '../quantities'
import { halfPitch, PACE_MM, plainSpace } from './kit.fixture'
import { replaySetOut, setOutWalk } from './set-out'
import type { SetOutItem } from './set-out-items'
import { setOutSentences } from './set-out-words'

function cone(upMm: number, rightMm: number): SetOutItem {
  const purpose = 'RW starts here'
  return {
    item: 'cone',
    upMm: millimetres(upMm),
    rightMm: millimetres(rightMm),
    purpose,
    mouth: null,
    activityIds: ['a'],
  }
}

// U.S. Soccer 7v7 areas of 12 × 24 yd on a half of 30 × 40 yd: the build-out line lies at 21 yd = 19 202 mm.
const BUILD_OUT_MM = 19_202
const TOUCHLINE_MM = 18_288

describe('the set-out walk', () => {
  test('follows the touchline to the build-out line and says so, with a bib in the middle of a long leg', () => {
    const space = halfPitch({
      markings: { ...halfPitch().markings, 'penalty-area': 'none', 'goal-area': 'none' },
      goals: [],
    })
    const items = [cone(BUILD_OUT_MM + 2400, TOUCHLINE_MM), cone(0, TOUCHLINE_MM - 800)]
    const { stops } = setOutWalk(items, space, PACE_MM)
    const said = setOutSentences(stops).map((sentence) => sentence.walkText)
    expect(said[0]).toBe('Put the bag down at the right corner.')
    expect(said[1]).toBe('Face up the pitch. Quarter turn left, 1 pace along the goal line.')
    expect(said[2]).toBe(
      'Turn round, 1 pace along the goal line, to the right corner. Quarter turn left, 24 paces along the right touchline, to the build-out line on the right; drop a bib after 12. On 3 paces along the right touchline.',
    )
  })

  test('re-zeroes at a landmark on the way: the stop after it is counted from there', () => {
    const { stops } = setOutWalk([cone(BUILD_OUT_MM + 2400, TOUCHLINE_MM)], halfPitch(), PACE_MM)
    const last = stops.at(-1)
    expect(last?.from).toBe('build-out-line-right')
    expect(last?.legs.at(-1)).toMatchObject({ paces: 3, turn: 'straight' })
  })

  test('names no landmark on a plain space but the bag', () => {
    const { stops } = setOutWalk([cone(10_000, 5000), cone(20_000, -5000)], plainSpace(30, 30), PACE_MM)
    expect(stops.map((stop) => stop.from)).toEqual(['bag', 'bag', 'bag'])
    expect(stops.flatMap((stop) => stop.legs).every((leg) => leg.to === null && leg.along === null)).toBe(true)
    expect(setOutSentences(stops)[0]?.walkText).toBe('Put the bag down: that is the middle of your goal.')
  })

  test('errors of whole paces do not add up over a long walk', () => {
    const items = Array.from({ length: 12 }, (_, index) => cone(1000 + index * 1190, (index % 2) * 1190))
    const space = plainSpace(40, 30)
    const { stops } = setOutWalk(items, space, PACE_MM)
    const ends = replaySetOut(stops, space, PACE_MM, undefined)
    let at = { upMm: 0, rightMm: 0 }
    stops.forEach((stop, index) => {
      at = ends[index]?.at(-1) ?? at
      expect(Math.abs(at.upMm - stop.upMm)).toBeLessThanOrEqual(PACE_MM / 2)
      expect(Math.abs(at.rightMm - stop.rightMm)).toBeLessThanOrEqual(PACE_MM / 2)
    })
  })

  test('ends in two checks between four different stops, none over thirty paces', () => {
    const corners = [cone(0, -10_000), cone(0, 10_000), cone(12_000, -10_000), cone(12_000, 10_000)]
    const { checks, stops } = setOutWalk(corners, plainSpace(30, 30), PACE_MM)
    expect(checks).toHaveLength(2)
    expect(new Set(checks.flatMap((check) => [check.fromNumber, check.toNumber])).size).toBe(4)
    // A rectangle of 12 by 20 m has diagonals of √544 m = 23.324 m, 29 paces of 80 cm.
    expect(checks.map((check) => [check.lengthMm, check.paces])).toEqual([
      [23_324, 29],
      [23_324, 29],
    ])
    expect(stops).toHaveLength(5)
  })

  test('a stop less than half a pace from the last one needs no legs, and says "Here too"', () => {
    const { stops } = setOutWalk([cone(8000, 0), cone(8300, 0)], plainSpace(30, 30), PACE_MM)
    expect(stops[2]?.legs).toEqual([])
    expect(setOutSentences(stops)[2]?.walkText).toBe('Here too.')
  })
})

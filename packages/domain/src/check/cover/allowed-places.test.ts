import { describe, expect, test } from 'vitest'
import { distance, point } from '../../geometry'
import type { PatternDocument, Restart } from '../../pattern'
import { samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { buildOutLine, nominalSpace, type Space } from '../../pitch'
import { metresOf, millimetres } from '../../quantities'
import { coverOf } from './cover-of'

const space = nominalSpace('us-7v7')

/** The sample pattern with its look at the restart itself, which the first player of the list takes from `up`, `right`. */
function lookAtRestart(restart: Restart, up = 3, right = 0): PatternDocument {
  const [look] = samplePattern.looks
  const answers = look!.answers.slice(1).map((answer) => ({
    ...answer,
    steps: [{ ...samplePattern.steps[0]!, stepId: 'a9' }],
  }))
  return {
    ...samplePattern,
    restart,
    positions: samplePattern.positions.map((each) =>
      each.position === 'GK' ? { ...each, spot: spotAt('goal-centre', up, right) } : each,
    ),
    looks: [{ ...look!, stepId: 's1', by: 'GK', answers }],
  }
}

function placesOf(document: PatternDocument, on: Space = space) {
  return coverOf(document, on)[0]!.places.map((each) => each.at)
}

const ball = point(3, 0)

describe('at the restart X stand where the law lets them', () => {
  // U.S. 7v7: the penalty area is 12 yards deep, the build-out line midway between it and halfway.
  test('goal kick: behind the build-out line', () => {
    const line = buildOutLine(space)!
    const places = placesOf(lookAtRestart('goal-kick'))
    expect(places.length).toBeGreaterThan(500)
    expect(places.every((at) => at.x >= line)).toBe(true)
    expect(places.some((at) => at.x < line + 1)).toBe(true)
  })

  test('goal kick in a format without that line: outside the penalty area, beside it too', () => {
    const nine = nominalSpace('us-9v9')
    const document = { ...lookAtRestart('goal-kick'), formatId: 'us-9v9' as const, positions: ninePositions() }
    const places = placesOf({ ...document, formation: '3-2-3', steps: document.steps.slice(0, 1) }, nine)
    expect(places.some((at) => at.x < 5)).toBe(true)
    expect(places.filter((at) => at.x < 12 && Math.abs(at.y) < 15)).toEqual([])
  })

  test('ball in the goalkeeper’s hands: behind the build-out line', () => {
    const line = buildOutLine(space)!
    expect(placesOf(lookAtRestart('goalkeeper-hands')).every((at) => at.x >= line)).toBe(true)
  })

  test('free kick: eight yards away, and out of the penalty area where the ball lies in it', () => {
    const inside = placesOf(lookAtRestart('free-kick'))
    expect(inside.some((at) => at.x < 10 && Math.abs(at.y) > 12)).toBe(true)
    expect(inside.filter((at) => at.x < 10.9 && Math.abs(at.y) < 10.9)).toEqual([])
    const outside = placesOf(lookAtRestart('free-kick', 20, 5))
    const nearest = Math.min(...outside.map((at) => distance(at, point(20, 5))))
    expect(nearest).toBeGreaterThanOrEqual(8 * 0.9144 - 0.0005)
    expect(nearest).toBeLessThan(8.5)
    expect(outside.some((at) => at.x < 8 && Math.abs(at.y) < 8)).toBe(true)
  })

  test('throw-in: two metres from the thrower', () => {
    const nearest = Math.min(...placesOf(lookAtRestart('throw-in', 20, 18)).map((at) => distance(at, point(20, 18))))
    expect(nearest).toBeGreaterThanOrEqual(2)
    expect(nearest).toBeLessThan(3)
  })

  test('open play: anywhere but in a player’s place', () => {
    const places = placesOf(lookAtRestart('open-play'))
    const nearest = Math.min(...places.map((at) => distance(at, ball)))
    expect(nearest).toBeGreaterThanOrEqual(1)
    expect(nearest).toBeLessThan(2)
  })
})

test('once the ball is in play X stand anywhere but in a player’s place, whatever the restart', () => {
  const later = samplePattern
  const places = placesOf({ ...later, restart: 'goal-kick' })
  expect(placesOf({ ...later, restart: 'open-play' })).toEqual(places)
  expect(places.some((at) => at.x < 2 && Math.abs(at.y) < 2)).toBe(true)
})

test('places are the middles of whole squares, as many left as right, and inside the space', () => {
  const odd: Space = { ...space, lengthMm: millimetres(54_321), widthMm: millimetres(36_543) }
  const places = placesOf(lookAtRestart('open-play'), odd)
  const rows = new Set(places.map((at) => at.x))
  const columns = new Set(places.map((at) => at.y))
  expect([rows.size, columns.size]).toEqual([54, 36])
  for (const y of columns) expect(columns.has(point(0, -y).y)).toBe(true)
  expect(Math.max(...rows)).toBeLessThanOrEqual(metresOf(odd.lengthMm) - 0.5)
  expect(Math.min(...rows)).toBeGreaterThanOrEqual(0.5)
})

function ninePositions(): PatternDocument['positions'] {
  return lookAtRestart('goal-kick').positions.map((each) =>
    each.position === 'GK' ? each : { ...each, spot: spotAt('centre-mark', 2, 3) },
  )
}

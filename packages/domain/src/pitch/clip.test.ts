import { describe, expect, test } from 'vitest'
import { point, rectangle } from '../geometry'
import { clipCircle, clipSegment } from './clip'

const area = rectangle(0, 10, -5, 5)

describe('lines cut at the edge of a space', () => {
  test('a segment inside stays as it is, one across is cut at both edges', () => {
    const inside = { from: point(1, 1), to: point(9, -4) }
    expect(clipSegment(inside, area)).toEqual(inside)
    expect(clipSegment({ from: point(-10, 0), to: point(30, 0) }, area)).toEqual({
      from: point(0, 0),
      to: point(10, 0),
    })
  })

  test('a segment that passes by, beside or past a corner, leaves nothing', () => {
    expect(clipSegment({ from: point(0, 6), to: point(10, 6) }, area)).toBeNull()
    expect(clipSegment({ from: point(-3, 4), to: point(1, 8) }, area)).toBeNull()
  })

  test('a circle inside stays whole, one outside is gone', () => {
    expect(clipCircle(point(5, 0), 4, [area])).toEqual([{ fromDegrees: 0, toDegrees: 360 }])
    expect(clipCircle(point(30, 0), 4, [area])).toEqual([])
  })

  test('a circle that only touches the edges from inside stays whole', () => {
    expect(clipCircle(point(5, 0), 5, [area])).toEqual([{ fromDegrees: 0, toDegrees: 360 }])
  })

  test('round a corner a quarter is left, round the middle of an edge a half, each in one piece', () => {
    expect(clipCircle(point(0, -5), 1, [area])).toEqual([{ fromDegrees: 0, toDegrees: 90 }])
    const half = clipCircle(point(0, 0), 2, [area])
    expect(half.map(({ fromDegrees, toDegrees }) => toDegrees - fromDegrees)).toEqual([180])
  })

  test('a circle wider than the space leaves one arc at each end of it', () => {
    const turns = clipCircle(point(5, 0), 5.5, [rectangle(0, 10, -20, 20)])
    expect(turns).toHaveLength(2)
    const sum = turns.reduce((total, turn) => total + turn.toDegrees - turn.fromDegrees, 0)
    // What is cut off on either side spans twice the angle whose cosine is 5/5.5.
    expect(sum).toBeCloseTo(360 - (4 * Math.acos(5 / 5.5) * 180) / Math.PI, 9)
  })
})

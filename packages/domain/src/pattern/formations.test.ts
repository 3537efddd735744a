import { describe, expect, test } from 'vitest'
import { FORMAT_IDS, type FormatId, formatOf } from '../formats'
import { distance } from '../geometry'
import { isInside, nominalSpace, spotPoint } from '../pitch'
import { spotAt } from './fixtures/sample-pattern'
import { formationsOf, startingPositions } from './formations'
import { mirrorPosition } from './mirror'

const all = FORMAT_IDS.flatMap((formatId) =>
  formatOf(formatId).formations.value.map((formation): [FormatId, string] => [formatId, formation]),
)

test('every formation a format offers has starting places', () => {
  for (const formatId of FORMAT_IDS) expect(formationsOf(formatId)).toEqual(formatOf(formatId).formations.value)
})

describe.each(all)('%s in %s', (formatId, formation) => {
  const positions = startingPositions(formatId, formation)?.value ?? []
  const space = nominalSpace(formatId)
  const points = new Map(positions.map(({ position, spot }) => [position, spotPoint(space, spot)!]))

  test('has as many players as the format, each position once', () => {
    expect(positions).toHaveLength(formatOf(formatId).playersPerSide.value)
    expect(points.size).toBe(positions.length)
    expect(positions[0]?.position).toBe('GK')
  })

  test('stands on the pitch, nobody within three metres of another', () => {
    for (const [position, point] of points) {
      expect(isInside(space, point)).toBe(true)
      for (const [other, place] of points) {
        if (other !== position) expect(distance(point, place)).toBeGreaterThan(3)
      }
    }
  })

  test('is its own mirror', () => {
    for (const [position, point] of points) {
      const twin = points.get(mirrorPosition(position))
      expect(twin?.x).toBeCloseTo(point.x, 9)
      expect(twin?.y).toBeCloseTo(-point.y, 9)
    }
  })
})

// Common practice, no source.
test('in a 7v7 2-3-1 build-out the centre backs start level with the top of the penalty area, the wide players where the build-out line meets the touchline, the midfielder by the arc, the striker high', () => {
  const space = nominalSpace('us-7v7')
  const at = (position: string) => {
    const placed = startingPositions('us-7v7', '2-3-1')?.value.find((each) => each.position === position)
    return spotPoint(space, placed!.spot)!
  }
  const top = spotPoint(space, spotAt('penalty-area-top'))!
  const line = spotPoint(space, spotAt('build-out-line-right'))!
  const arc = spotPoint(space, spotAt('penalty-arc-top'))!
  const halfway = spotPoint(space, spotAt('centre-mark'))!
  expect([at('LCB').x, at('RCB').x]).toEqual([top.x, top.x])
  expect(distance(at('RW'), line)).toBeLessThanOrEqual(2)
  expect(distance(at('CM'), arc)).toBeLessThanOrEqual(2)
  expect(at('ST').x).toBeGreaterThan(halfway.x)
})

test('a formation nobody has written starts from no places', () => {
  expect(startingPositions('us-7v7', '1-1-4')).toBeNull()
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { formatOf } from '../formats'
import { distance, point } from '../geometry'
import { millimetres } from '../quantities'
import { nominalSpace } from './nominal-space'
import { gateAt, NEAR_THE_BALL, placeSpots } from './place-spots'
import { MARKINGS, type Space } from './space'
import { LANDMARKS, type Landmark, type Spot } from './spot'
import { spotPoint } from './spot-point'

const sevens = formatOf('us-7v7')
const drawn = nominalSpace('us-7v7')
const noLines = Object.fromEntries(MARKINGS.map((marking) => [marking, 'none'])) as Space['markings']

function spot(landmark: Landmark, upMetres = 0, rightMetres = 0): Spot {
  return { landmark, upMm: millimetres(upMetres * 1000), rightMm: millimetres(rightMetres * 1000) }
}

function space(lengthMetres: number, widthMetres: number, covers: Space['covers'], markings = noLines): Space {
  return {
    ...drawn,
    lengthMm: millimetres(lengthMetres * 1000),
    widthMm: millimetres(widthMetres * 1000),
    covers,
    markings,
    goals: [],
  }
}

const offset = fc.integer({ min: -12_000, max: 12_000 }).map(millimetres)
const spots = fc.array(fc.record<Spot>({ landmark: fc.constantFrom(...LANDMARKS), upMm: offset, rightMm: offset }), {
  minLength: 1,
  maxLength: 12,
})
const side = fc.integer({ min: 8, max: 90 })
const partOfPitch = fc
  .record({ length: side, width: side, covers: fc.constantFrom('half', 'plain') })
  .map(({ length, width, covers }) => space(length, width, covers))

describe('a pattern’s spots on tonight’s space', () => {
  test('on the pitch they were drawn on, spots lie where they were drawn', () => {
    fc.assert(
      fc.property(spots, (any) => {
        for (const placed of placeSpots(drawn, sevens, any)) {
          const expected = spotPoint(drawn, placed.spot)
          expect(distance(placed.point ?? point(1e6, 0), expected ?? point(0, 0))).toBeLessThan(1e-9)
        }
      }),
    )
  })

  test('nothing is shrunk: on part of a pitch without lines every spot keeps its metres up the pitch', () => {
    fc.assert(
      fc.property(partOfPitch, spots, (tonight, any) => {
        for (const placed of placeSpots(tonight, sevens, any)) {
          expect(placed.point?.x).toBeCloseTo(spotPoint(drawn, placed.spot)?.x ?? Number.NaN, 9)
        }
      }),
    )
  })

  test('spots near the ball keep their distances to each other on every space', () => {
    fc.assert(
      fc.property(partOfPitch, spots, (tonight, any) => {
        const near = placeSpots(tonight, sevens, any).filter((placed) => placed.keeps === 'metres')
        for (const a of near) {
          for (const b of near) {
            const before = distance(spotPoint(drawn, a.spot) ?? point(0, 0), spotPoint(drawn, b.spot) ?? point(1e6, 0))
            expect(distance(a.point ?? point(0, 0), b.point ?? point(1e6, 0))).toBeCloseTo(before, 9)
          }
        }
      }),
    )
  })

  test('what lies outside says so, and nothing else does', () => {
    const [inside, beyond, beside] = placeSpots(space(27, 36, 'half'), sevens, [
      spot('penalty-mark'),
      spot('centre-mark', 2),
      spot('corner-left', 20, -1),
    ])
    expect([inside?.lies, beyond?.lies, beside?.lies]).toEqual(['inside', 'outside', 'outside'])
    expect(beyond?.point).toEqual(point(29.432, 0))
  })

  test('a far spot at the touchline stays at the touchline of a narrower or wider space', () => {
    for (const width of [24, 60]) {
      const [winger] = placeSpots(space(27.432, width, 'half'), sevens, [spot('build-out-line-left', 0, 1)])
      expect(winger?.keeps).toBe('landmark')
      expect(winger?.point?.y).toBe(-width / 2 + 1)
    }
  })

  test('a line seen on the ground is kept to, one that is only computed is not', () => {
    const short = { ...noLines, halfway: 'painted' } as const
    const high = spot('halfway-right', -1, -3)
    const [seen] = placeSpots(space(24, 36, 'half', short), sevens, [high])
    const [computed] = placeSpots(space(24, 36, 'half'), sevens, [high])
    expect([seen?.lies, seen?.point?.x]).toEqual(['inside', 23])
    expect([computed?.lies, computed?.point?.x]).toEqual(['outside', 26.432])
  })

  test('on another whole pitch far spots go with its lines', () => {
    const longer = { ...drawn, lengthMm: millimetres(59_436) }
    const [striker] = placeSpots(longer, sevens, [spot('far-penalty-area-top', -4)])
    expect(striker?.point?.x).toBeCloseTo(59.436 - 10.973 - 4, 9)
  })

  test('near is measured from the ball: a throw-in on the halfway line keeps its metres round the thrower', () => {
    const thrower = spot('halfway-right')
    const receiver = spot('centre-mark', 0, 10)
    const narrow = { ...drawn, widthMm: millimetres(30_000) }
    const [a, b] = placeSpots(narrow, sevens, [thrower, receiver], thrower)
    expect(a?.point).toEqual(point(27.432, 15))
    expect(distance(a?.point ?? point(0, 0), b?.point ?? point(0, 0))).toBeCloseTo(8.288, 9)
    expect(NEAR_THE_BALL.kind).toBe('habit')
  })

  test('a spot on a line that the pattern’s format does not have lies nowhere', () => {
    const [placed] = placeSpots(nominalSpace('us-9v9'), formatOf('us-9v9'), [spot('build-out-line-left')])
    expect(placed).toEqual({ spot: spot('build-out-line-left'), point: null, keeps: null, lies: 'nowhere' })
  })
})

describe('the gate', () => {
  const half = space(27, 36, 'half')

  test('stands where the way crosses the edge', () => {
    expect(gateAt(half, point(17, 0), point(37, 10))).toEqual(point(27, 5))
    expect(gateAt(half, point(10, 8), point(10, 28))).toEqual(point(10, 18))
  })

  test('is not needed where the way stays inside', () => {
    expect(gateAt(half, point(0, 0), point(27, 18))).toBeNull()
  })

  test('a way that starts outside is a bug', () => {
    expect(() => gateAt(half, point(28, 0), point(30, 0))).toThrow('starts inside')
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Point } from '../../geometry'
import {
  checkShape,
  mirrorPattern,
  mirrorPosition,
  type PatternDocument,
  type Position,
  receiverOf,
} from '../../pattern'
import { spotArbitrary } from '../../pattern/fixtures/arbitrary-pattern'
import { mirrorPoint, nominalSpace, type Space } from '../../pitch'
import { millimetres, seconds } from '../../quantities'
import { AGE_PROFILES } from '../profiles'
import { choose } from './count-placements'
import { coverOf } from './cover-of'
import { lookedPatternArbitrary } from './fixtures/arbitrary-looks'
import { plainLook } from './fixtures/plain-cover'
import type { LookCover } from './look-cover'

const space = nominalSpace('us-7v7')
/** A corner of a pitch in which X are near whatever happens. */
const small: Space = { ...space, covers: 'plain', lengthMm: millimetres(30_000), widthMm: millimetres(28_000) }
/** A grid coarse enough that every set of three places can be gone through. */
const COARSE = { gridMm: 7000 }
const LONG = { timeout: 60_000 }

function only(covers: readonly LookCover[]): LookCover {
  expect(covers).toHaveLength(1)
  return covers[0]!
}

function letterAt(cover: LookCover, way: number | null): string | null {
  return way === null ? null : (cover.ways[way]!.letter ?? 'drawn')
}

/** Every set of so many different places. */
function* setsOf(places: readonly Point[], size: number, from = 0): Generator<readonly Point[]> {
  if (size === 0) {
    yield []
    return
  }
  for (let index = from; index < places.length; index += 1) {
    for (const rest of setsOf(places, size - 1, index + 1)) yield [places[index]!, ...rest]
  }
}

test('the patterns drawn below may all be saved', () => {
  fc.assert(
    fc.property(lookedPatternArbitrary(), (document) => {
      expect(checkShape(document)).toEqual([])
    }),
  )
})

describe('cover', LONG, () => {
  test('is exactly what going through every set of one, two and three X finds, whatever the signs', () => {
    const seen = new Set<string>()
    fc.assert(
      fc.property(lookedPatternArbitrary(), fc.integer({ min: 5000, max: 7000 }), (document, gridMm) => {
        const cover = only(coverOf(document, small, { gridMm }))
        const plain = plainLook(document, small)
        const places = cover.places.map((each) => each.at)
        for (const { opponents, placements, open, ways } of cover.counts) {
          const taken = new Map<string | null, number>()
          let sets = 0
          for (const set of setsOf(places, opponents)) {
            const letter = plain.takenAt(set)
            sets += 1
            taken.set(letter, (taken.get(letter) ?? 0) + 1)
          }
          expect(placements).toBe(sets)
          expect(placements - open).toBe(taken.get(null) ?? 0)
          ways.forEach((way, index) => {
            const letter = letterAt(cover, index)
            expect([letter, way.taken]).toEqual([letter, taken.get(letter) ?? 0])
            const sign = document.looks[0]!.answers['ABCDE'.indexOf(letter!)]?.sign
            if (way.taken > 0 && sign !== undefined) seen.add(sign)
          })
        }
        for (const { at, way } of cover.places) expect(letterAt(cover, way)).toBe(plain.takenAt([at]))
      }),
      { numRuns: 60 },
    )
    // Most signs led to their answer somewhere, or hardly anything was tried; each has tests of its own.
    expect(seen.size).toBeGreaterThanOrEqual(4)
  })

  test('never falls when an answer is added before the exit', () => {
    fc.assert(
      fc.property(lookedPatternArbitrary(), lookedPatternArbitrary(), fc.nat(), (document, other, at) => {
        const look = document.looks[0]!
        const by = look.by
        const more = other.looks[0]!
        fc.pre(more.by === by)
        const added = {
          ...more.answers[0]!,
          steps: more.answers[0]!.steps.map((s) => ({ ...s, stepId: `n${s.stepId}` })),
        }
        const place = at % look.answers.length
        const answers = [...look.answers.slice(0, place), added, ...look.answers.slice(place)]
        const before = only(coverOf(document, space, COARSE))
        const after = only(coverOf({ ...document, looks: [{ ...look, answers }] }, space, COARSE))
        before.places.forEach((each, index) => {
          if (each.way !== null) expect(after.places[index]!.way).not.toBeNull()
        })
        before.counts.forEach((each, index) => {
          expect(after.counts[index]!.open).toBeGreaterThanOrEqual(each.open)
        })
      }),
      { numRuns: 60 },
    )
  })

  test('judges each X alone: a ball gets through a set of X where it gets through each of them, so one X more never opens it', () => {
    fc.assert(
      fc.property(lookedPatternArbitrary(), (document) => {
        const { counts } = only(coverOf(document, space, COARSE))
        const alone = counts[0]!.ways.map((way) => way.lanesOpen)
        for (const { opponents, ways } of counts) {
          expect(ways.map((way) => way.lanesOpen)).toEqual(alone.map((open) => choose(open, opponents)))
        }
      }),
      { numRuns: 60 },
    )
  })

  test('of each way, and of a look without signs that X can bring about, never rises with one more X', () => {
    const calm = lookedPatternArbitrary(['lane-shut', 'presser-stays-off', 'all-shut'], () => null)
    fc.assert(
      fc.property(calm, (document) => {
        const { counts, ways } = only(coverOf(document, space, COARSE))
        counts.slice(1).forEach((more, index) => {
          const fewer = counts[index]!
          const falls = (now: number, earlier: number) =>
            expect(BigInt(now) * BigInt(fewer.placements)).toBeLessThanOrEqual(
              BigInt(earlier) * BigInt(more.placements),
            )
          falls(more.open, fewer.open)
          for (const way of ways.keys()) falls(more.ways[way]!.lanesOpen, fewer.ways[way]!.lanesOpen)
        })
      }),
      { numRuns: 60 },
    )
  })

  test('never falls with X who react later: no ball is shut for it, and nothing at all where no lane but the drawn is a sign', () => {
    fc.assert(
      fc.property(lookedPatternArbitrary(), fc.double({ min: 0, max: 1, noNaN: true }), (document, later) => {
        const { reaction } = AGE_PROFILES.U10
        const slow = { ...AGE_PROFILES.U10, reaction: { ...reaction, value: seconds(reaction.value + later) } }
        const drawnOnly = withLanesOfTheDrawnBall(document)
        const before = only(coverOf(drawnOnly, space, COARSE))
        const after = only(coverOf(drawnOnly, space, { ...COARSE, opponents: slow }))
        before.counts.forEach((each, index) => {
          const now = after.counts[index]!
          expect(now.open).toBeGreaterThanOrEqual(each.open)
          each.ways.forEach((way, at) => {
            expect(now.ways[at]!.lanesOpen).toBeGreaterThanOrEqual(way.lanesOpen)
          })
        })
      }),
      { numRuns: 60 },
    )
  })

  test('of the mirrored pattern is the mirror, place by place, hole by hole', () => {
    fc.assert(
      fc.property(lookedPatternArbitrary(), (document) => {
        const cover = only(coverOf(document, space, { gridMm: 2000 }))
        const mirrored = only(coverOf(mirrorPattern(document), space, { gridMm: 2000 }))
        expect(mirrored.places).toEqual(cover.places.map((each) => ({ ...each, at: mirrorPoint(each.at) })))
        expect(mirrored.by).toBe(mirrorPosition(cover.by))
        mirrored.counts.forEach((each, index) => {
          const { holes, sentence: _, ...numbers } = cover.counts[index]!
          expect(each).toMatchObject(numbers)
          expect(each.holes.map((hole) => hole.at)).toEqual(holes.map((hole) => hole.at.map(mirrorPoint)))
        })
      }),
      { numRuns: 40 },
    )
  })

  test('does not depend on what the positions are called', () => {
    fc.assert(
      fc.property(lookedPatternArbitrary(), (document) => {
        const cover = coverOf(document, space, { gridMm: 3000 })
        const renamed = coverOf(renamePositions(document), space, { gridMm: 3000 })
        expect(JSON.parse(JSON.stringify(renamed).replaceAll('Q', ''))).toEqual(JSON.parse(JSON.stringify(cover)))
      }),
      { numRuns: 40 },
    )
  })

  test('names only holes: with X there and nowhere else nothing is open, without one of them something is', () => {
    let named = 0
    fc.assert(
      fc.property(lookedPatternArbitrary(), (document) => {
        const cover = only(coverOf(document, space, { gridMm: 3000 }))
        const plain = plainLook(document, space)
        for (const { holes, opponents, sentence } of cover.counts) {
          expect(holes.length).toBeLessThanOrEqual(3)
          for (const { at, words } of holes) {
            named += 1
            expect(at.length).toBeLessThanOrEqual(opponents)
            expect(plain.takenAt(at)).toBeNull()
            if (at.length > 1) for (const one of at) expect(plain.takenAt([one])).not.toBeNull()
            expect(sentence).toContain(words)
          }
        }
      }),
      { numRuns: 40 },
    )
    expect(named).toBeGreaterThan(20)
  })

  test('is finite and whole for hostile patterns: all in one place, balls of no length, spaces without a metre', () => {
    const sides = fc.constantFrom(500, 1000, 1700, 30_000, 150_000)
    fc.assert(
      fc.property(
        lookedPatternArbitrary(),
        spotArbitrary,
        sides,
        sides,
        fc.boolean(),
        (drawn, spot, long, wide, same) => {
          const document = same ? { ...drawn, positions: drawn.positions.map((each) => ({ ...each, spot })) } : drawn
          const odd: Space = { ...space, covers: 'plain', lengthMm: millimetres(long), widthMm: millimetres(wide) }
          const cover = only(coverOf(document, odd, { gridMm: 4000 }))
          for (const { placements, open, perMille, ways, sentence } of cover.counts) {
            for (const whole of [placements, open, ...ways.flatMap((way) => [way.taken, way.lanesOpen])]) {
              expect(Number.isSafeInteger(whole) && whole >= 0 && whole <= placements).toBe(true)
            }
            expect(perMille).toBe(placements === 0 ? null : Number((BigInt(open) * 1000n) / BigInt(placements)))
            expect(sentence).toMatch(/^[A-Z][^\n]*\.$/u)
            expect(sentence).not.toMatch(/undefined|null|NaN/u)
          }
        },
      ),
      { numRuns: 60 },
    )
  })
})

/** The same look, with every "the way is shut" said of the ball as drawn; where that is no ball, of nothing at all. */
function withLanesOfTheDrawnBall(document: PatternDocument): PatternDocument {
  const look = document.looks[0]!
  const receiver = receiverOf(document.steps.find((step) => step.stepId === look.stepId)!.action)
  const answers = look.answers.map((each) =>
    each.sign === 'lane-shut' ? { ...each, about: receiver === look.by ? look.by : receiver } : each,
  )
  return { ...document, looks: [{ ...look, answers }] }
}

function renamePositions(document: PatternDocument): PatternDocument {
  const names = new Set<Position>(document.positions.map((each) => each.position))
  const swap = (value: unknown): unknown => {
    if (typeof value === 'string') return names.has(value) && value !== 'GK' ? `Q${value}` : value
    if (Array.isArray(value)) return value.map(swap)
    if (typeof value !== 'object' || value === null) return value
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, swap(each)]))
  }
  return swap(document) as PatternDocument
}

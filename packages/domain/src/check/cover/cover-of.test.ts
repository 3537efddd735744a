import { describe, expect, test } from 'vitest'
import { listBranches } from '../../pattern'
import { passStep, samplePattern } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace, type Space } from '../../pitch'
import { metres, metresPerSecond, millimetres, seconds } from '../../quantities'
import { AGE_PROFILES } from '../profiles'
import { timelineOf } from '../timeline'
import { choose } from './count-placements'
import { coverOf } from './cover-of'

const space = nominalSpace('us-7v7')
const [cover] = coverOf(samplePattern, space)

test('a pattern without looks has no cover', () => {
  expect(coverOf({ ...samplePattern, looks: [] }, space)).toEqual([])
})

test('a look lists its answers, the ball as drawn and the exit in the order they are tried', () => {
  expect(cover).toMatchObject({ lookId: 'l1', stepId: 's2', by: 'RCB' })
  expect(cover?.ways.map(({ letter, stepIds }) => [letter, stepIds])).toEqual([
    ['A', ['a1', 'a2']],
    [null, ['s2']],
    ['B', ['a3']],
  ])
})

test('counts whole placements for one, two and three X, and says the share in whole per mille, rounded down', () => {
  const places = cover!.places.length
  for (const { opponents, placements, open, perMille, ways } of cover!.counts) {
    expect(placements).toBe(choose(places, opponents))
    expect(ways.reduce((sum, way) => sum + way.taken, 0)).toBe(open)
    expect(perMille).toBe(Number((BigInt(open) * 1000n) / BigInt(placements)))
    for (const way of ways) expect(way.taken).toBeLessThanOrEqual(way.lanesOpen)
  }
})

test.each([
  [5, 1, 5],
  [5, 2, 10],
  [5, 3, 10],
  [4, 3, 4],
  [3, 3, 1],
  [2, 3, 0],
  [0, 1, 0],
  // The square metres of the largest space: 22,500 · 22,499 · 22,498 / 6, below 2⁵³.
  [22_500, 3, Number((22_500n * 22_499n * 22_498n) / 6n)],
])('of %i places, %i can be chosen in %i ways', (places, chosen, sets) => {
  expect(choose(places, chosen)).toBe(sets)
})

describe('a hole', () => {
  const sentences = cover!.counts.map((each) => each.sentence)

  test('is said with the share, in words a coach reads', () => {
    expect(sentences[0]).toMatch(/^Open from \d+ % of the places where one X may stand; holes?: X /u)
    expect(sentences[2]).toMatch(/ where three X may stand; /u)
  })

  test('lies where X stand who leave nothing open', () => {
    const [one] = cover!.counts
    const isHole = (up: number, right: number) =>
      cover!.places.some(({ at, way }) => at.x === up && at.y === right && way === null)
    expect(one!.holes.length).toBeGreaterThan(0)
    for (const hole of one!.holes) expect(isHole(hole.at[0]!.x, hole.at[0]!.y)).toBe(true)
  })
})

test('says plainly when nothing is open, when all is, and when there is no room', () => {
  const tiny: Space = { ...space, covers: 'plain', lengthMm: millimetres(800), widthMm: millimetres(800) }
  expect(coverOf(samplePattern, tiny)[0]?.counts.map((each) => each.sentence)).toEqual([
    'There is no room for one X here.',
    'There is no room for two X here.',
    'There is no room for three X here.',
  ])
  const giants = {
    ...AGE_PROFILES.U10,
    reach: { ...AGE_PROFILES.U10.reach, value: metres(200) },
    reaction: { ...AGE_PROFILES.U10.reaction, value: seconds(0) },
  }
  expect(coverOf(samplePattern, space, { opponents: giants })[0]?.counts[1]?.sentence).toMatch(
    /^Open from none of the places where two X may stand/u,
  )
  const asleep = { ...AGE_PROFILES.U10, reaction: { ...AGE_PROFILES.U10.reaction, value: seconds(60) } }
  expect(coverOf(samplePattern, space, { opponents: asleep })[0]?.counts[2]?.sentence).toBe(
    'Open from all of the places where three X may stand.',
  )
})

describe('the time between sign and ball', () => {
  test('runs from the ball before to the first ball of the answer', () => {
    const [a] = listBranches(samplePattern)
    const { steps } = timelineOf(a!.document, space, AGE_PROFILES.U10, 'normal')
    expect(cover?.ways[0]?.signSeconds).toBe(steps[1]!.startsAt - steps[0]!.startsAt)
    expect(cover?.notes).toEqual([])
  })

  test('is noted where it is shorter than a second', () => {
    const quick = {
      ...AGE_PROFILES.U10,
      receiveTurnLook: { ...AGE_PROFILES.U10.receiveTurnLook, value: seconds(0.1) },
      arrivalSpeed: { ...AGE_PROFILES.U10.arrivalSpeed, value: metresPerSecond(25) },
      kickSpeedMax: { ...AGE_PROFILES.U10.kickSpeedMax, value: metresPerSecond(30) },
    }
    const { notes, ways } = coverOf(samplePattern, space, { profile: quick })[0]!
    expect(ways[0]!.signSeconds).toBeLessThan(1)
    expect(notes.map((note) => note.stepId)).toEqual(['a1', 'a3'])
    expect(notes[0]).toMatchObject({
      code: 'sign-too-short',
      position: 'RCB',
      limit: 1,
      unit: 's',
      sourceKind: 'habit',
    })
    expect(notes[0]?.sentence).toMatch(/^RCB sees the sign for answer A only 0\.\d s before playing\.$/u)
  })

  test('does not run at the restart, which can wait', () => {
    const look = { ...samplePattern.looks[0]!, stepId: 's1', by: 'GK' }
    const answers = [{ ...look.answers[1]!, steps: [passStep('a9', 'GK', 'LCB')] }]
    const [atRestart] = coverOf({ ...samplePattern, looks: [{ ...look, answers }] }, space)
    expect(atRestart?.ways.map((way) => way.signSeconds)).toEqual([null, null])
    expect(atRestart?.notes).toEqual([])
  })
})

test('a ball that stops short is no answer, wherever X stand', () => {
  const far = { ...passStep('a3', 'RCB', 'ST') }
  const look = samplePattern.looks[0]!
  const weak = { ...AGE_PROFILES.U10, kickSpeedMax: { ...AGE_PROFILES.U10.kickSpeedMax, value: metresPerSecond(4) } }
  const answers = [{ ...look.answers[1]!, steps: [far] }]
  const [short] = coverOf({ ...samplePattern, looks: [{ ...look, answers }] }, space, { profile: weak })
  const exit = short!.ways.findIndex((way) => way.letter === 'A')
  expect(short!.ways[exit]!.arrives).toBe(false)
  for (const { ways } of short!.counts) expect(ways[exit]).toEqual({ taken: 0, lanesOpen: 0 })
})

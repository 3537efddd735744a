import { describe, expect, test } from 'vitest'
import { formats } from './formats'

const YARD_MM = 914.4
const FOOT_MM = 304.8

/** Yards and feet are rounded once, to whole millimetres: half a millimetre is the only tolerance. */
function expectYards(lengthMm: number | undefined, yards: number): void {
  expect(Math.abs((lengthMm ?? Number.NaN) - yards * YARD_MM)).toBeLessThanOrEqual(0.5)
}

// Source: IFAB, Laws of the Game, Law 1 The Field of Play; the 2006/07 text and copies of later ones agree. Exact.
describe('IFAB Laws of the Game, Law 1', () => {
  const law = formats['ifab-11v11']

  test('Dimensions: 90 to 120 m by 45 to 90 m', () => {
    expect(law.lengthMm.value).toEqual({ minMm: 90_000, maxMm: 120_000 })
    expect(law.widthMm.value).toEqual({ minMm: 45_000, maxMm: 90_000 })
  })

  test('Goals: 7.32 m between the posts, 2.44 m under the bar', () => {
    expect(law.goal.value).toEqual({ widthMm: 7320, heightMm: 2440, meaning: 'exact' })
  })

  test('The goal area: 5.5 m deep, 5.5 m beyond the inside of each post, so 18.32 m wide', () => {
    expect(law.goalArea?.value).toEqual({ depthMm: 5500, widthMm: 18_320 })
  })

  test('The penalty area: 16.5 m deep, 16.5 m beyond the inside of each post, so 40.32 m wide', () => {
    expect(law.penaltyArea?.value).toEqual({ depthMm: 16_500, widthMm: 40_320 })
  })

  test('The penalty area: mark 11 m from the goal line, arc of 9.15 m; Field markings: centre circle of 9.15 m', () => {
    expect(law.penaltyMarkMm?.value).toBe(11_000)
    expect(law.circleRadiusMm?.value).toBe(9150)
  })

  test('The corner area: quarter circle of 1 m', () => {
    expect(law.cornerArcRadiusMm?.value).toBe(1000)
  })
})

// Source: IFAB, Laws of the Game, Law 13 Free Kicks: 9.15 m (10 yd).
test('IFAB Law 13: opponents keep 9.15 m from a free kick', () => {
  expect(formats['ifab-11v11'].restartDistanceMm.value).toBe(9150)
})

// Source: U.S. Soccer, Player Development Initiatives, Small-Sided Games Chart, in force 1 August 2017.
describe('U.S. Soccer Player Development Initiatives, Small-Sided Games Chart, 2017', () => {
  test.each([
    ['us-7v7', 7, [55, 65], [35, 45], ['U9', 'U10']],
    ['us-9v9', 9, [70, 80], [45, 55], ['U11', 'U12']],
  ] as const)('%s: players, length, width in yards, ages', (formatId, players, length, width, ages) => {
    const format = formats[formatId]
    expect(format.playersPerSide.value).toBe(players)
    expectYards(format.lengthMm.value.minMm, length[0])
    expectYards(format.lengthMm.value.maxMm, length[1])
    expectYards(format.widthMm.value.minMm, width[0])
    expectYards(format.widthMm.value.maxMm, width[1])
    expect(format.ageGroups.value).toEqual(ages)
  })

  test.each([
    ['us-7v7', 18.5, 6.5],
    ['us-9v9', 21, 7],
  ] as const)('%s: the largest goal is %f by %f feet', (formatId, width, height) => {
    const { value } = formats[formatId].goal
    expect(value.meaning).toBe('maximum')
    expect(Math.abs(value.widthMm - width * FOOT_MM)).toBeLessThanOrEqual(0.5)
    expect(Math.abs(value.heightMm - height * FOOT_MM)).toBeLessThanOrEqual(0.5)
  })

  test('the build-out line belongs to 7v7 only, and offside is judged from it there', () => {
    expect(formats['us-7v7'].buildOutLine?.value).toBe('midway')
    expect(formats['us-7v7'].offsideFrom.value).toBe('build-out-line')
    expect(formats['us-9v9'].buildOutLine).toBeNull()
    expect(formats['us-9v9'].offsideFrom.value).toBe('halfway')
    expect(formats['us-7v7'].punting.value).toBe(false)
    expect(formats['us-9v9'].punting.value).toBe(true)
  })
})

// Source: U.S. 7v7 field markings as state and league rules print them (2020): areas 12 by 24 and 4 by 8 yards, arcs of 8.
test('U.S. 7v7 markings: penalty area 12 by 24, goal area 4 by 8, circles of 8 yards', () => {
  const format = formats['us-7v7']
  expectYards(format.penaltyArea?.value.depthMm, 12)
  expectYards(format.penaltyArea?.value.widthMm, 24)
  expectYards(format.goalArea?.value.depthMm, 4)
  expectYards(format.goalArea?.value.widthMm, 8)
  expectYards(format.circleRadiusMm?.value, 8)
})

// Source: U.S. Soccer concussion rules, 2016: nobody of U11 or younger heads the ball; at U12 and U13 training is limited.
test('U.S. Soccer concussion rules, 2016: a format with U11 or younger allows no heading', () => {
  expect(formats['us-7v7'].headingAllowed.value).toBe(false)
  expect(formats['us-9v9'].headingAllowed.value).toBe(false)
  expect(formats['ifab-11v11'].headingAllowed.value).toBe(true)
})

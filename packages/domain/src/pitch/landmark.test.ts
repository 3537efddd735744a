import { describe, expect, test } from 'vitest'
import { point } from '../geometry'
import { millimetres } from '../quantities'
import { buildOutLine, landmarkPoint } from './landmark'
import { nominalSpace } from './nominal-space'
import type { Space } from './space'
import { LANDMARKS } from './spot'

const sevens = nominalSpace('us-7v7')
const half: Space = { ...sevens, covers: 'half', lengthMm: millimetres(27_432), goals: sevens.goals.slice(0, 1) }
const plain: Space = {
  ...sevens,
  covers: 'plain',
  lengthMm: millimetres(30_000),
  widthMm: millimetres(40_000),
  goals: [],
}

describe('where a landmark lies', () => {
  test('on the nominal pitch of a format with a build-out line, every landmark exists', () => {
    for (const landmark of LANDMARKS) expect(landmarkPoint(sevens, landmark), landmark).not.toBeNull()
  })

  test('in a format without a build-out line only its landmarks are missing', () => {
    for (const landmark of LANDMARKS) {
      const exists = landmarkPoint(nominalSpace('us-9v9'), landmark) !== null
      expect(exists, landmark).toBe(!landmark.includes('build-out-line'))
    }
  })

  test('a half ends at the halfway line and has no far end', () => {
    expect(landmarkPoint(half, 'centre-mark')).toEqual(point(27.432, 0))
    for (const landmark of LANDMARKS.filter((each) => each.startsWith('far-'))) {
      expect(landmarkPoint(half, landmark), landmark).toBeNull()
    }
  })

  test('a goal carried to the halfway line of a half is its far goal, with posts as wide as it is', () => {
    const carried: Space = { ...half, goals: [{ end: 'far', widthMm: millimetres(2000), movable: true }] }
    expect(landmarkPoint(carried, 'far-goal-centre')).toEqual(point(27.432, 0))
    expect(landmarkPoint(carried, 'far-goal-post-left')).toEqual(point(27.432, -1))
    expect(landmarkPoint(carried, 'far-corner-left')).toBeNull()
  })

  test('a plain rectangle has its goal in the middle of its own end line, its corners, and its middle', () => {
    expect(landmarkPoint(plain, 'goal-centre')).toEqual(point(0, 0))
    expect(landmarkPoint(plain, 'corner-right')).toEqual(point(0, 20))
    expect(landmarkPoint(plain, 'halfway-left')).toEqual(point(15, -20))
    expect(landmarkPoint(plain, 'far-corner-left')).toEqual(point(30, -20))
    expect(landmarkPoint(plain, 'far-goal-centre')).toEqual(point(30, 0))
  })

  test('an area keeps its measures and is gone where the space is narrower', () => {
    const narrow: Space = { ...sevens, widthMm: millimetres(20_000) }
    expect(landmarkPoint(narrow, 'penalty-area-top')).toEqual(point(10.973, 0))
    expect(landmarkPoint(narrow, 'penalty-area-corner-left')).toBeNull()
    expect(landmarkPoint(narrow, 'corner-left')).toEqual(point(0, -10))
  })

  test('posts stand where the goal found has them, else where the format’s goal would', () => {
    const small: Space = { ...sevens, goals: [{ end: 'own', widthMm: millimetres(3000), movable: false }] }
    expect(landmarkPoint(small, 'goal-post-right')).toEqual(point(0, 1.5))
    expect(landmarkPoint(small, 'far-goal-post-right')?.y).toBe(5.639 / 2)
  })

  test('the 7v7 penalty mark and its arc follow the club’s choice', () => {
    expect(landmarkPoint(sevens, 'penalty-mark', { penaltyMarkYards7v7: 8 })?.x).toBe(7.315)
    expect(landmarkPoint(sevens, 'penalty-arc-top', { penaltyMarkYards7v7: 8 })?.x).toBe(7.315 + 7.315)
    expect(landmarkPoint(sevens, 'penalty-mark', { penaltyMarkYards7v7: 10 })?.x).toBe(9.144)
  })

  test('there is no build-out line where the halfway line is nearer than the top of the penalty area', () => {
    expect(buildOutLine({ ...half, lengthMm: millimetres(10_973) })).toBeNull()
    expect(buildOutLine({ ...half, lengthMm: millimetres(10_975) })).toBeCloseTo(10.974, 9)
  })
})

import { describe, expect, test } from 'vitest'
import { millimetres } from '../quantities'
import { landmarksFound } from './landmarks-found'
import { nominalSpace } from './nominal-space'
import { type Finding, MARKINGS, type Space } from './space'
import type { Landmark } from './spot'

const sevens = nominalSpace('us-7v7')

function ground(covers: Space['covers'], lines: Partial<Space['markings']>, goals: Space['goals'] = []): Space {
  const bare = Object.fromEntries(MARKINGS.map((marking) => [marking, 'none'])) as Record<string, Finding>
  return { ...sevens, covers, markings: { ...bare, ...lines } as Space['markings'], goals }
}

function namesOf(space: Space): readonly Landmark[] {
  return landmarksFound(space).map((found) => found.landmark)
}

describe('what a coach can find on the ground', () => {
  test('bare grass shows nothing', () => {
    expect(namesOf(ground('whole', {}))).toEqual([])
  })

  test('a goal shows its middle and its posts', () => {
    const goals = [{ end: 'own', widthMm: millimetres(3000), movable: true }] as const
    expect(landmarksFound(ground('plain', {}, goals)).map(({ landmark, finding }) => [landmark, finding])).toEqual([
      ['goal-centre', 'goal'],
      ['goal-post-left', 'goal'],
      ['goal-post-right', 'goal'],
    ])
  })

  test('a painted penalty area shows its corners and where it meets the goal line, at both ends', () => {
    expect(namesOf(ground('whole', { 'penalty-area': 'painted' }))).toEqual([
      'penalty-area-corner-left',
      'penalty-area-corner-right',
      'penalty-area-edge-left',
      'penalty-area-edge-right',
      'far-penalty-area-corner-left',
      'far-penalty-area-corner-right',
      'far-penalty-area-edge-left',
      'far-penalty-area-edge-right',
    ])
  })

  test('flags show its corners only', () => {
    expect(namesOf(ground('half', { 'penalty-area': 'flags' }))).toEqual([
      'penalty-area-corner-left',
      'penalty-area-corner-right',
    ])
  })

  test('the middle of a line is never found, however well it is painted', () => {
    const found = namesOf(sevens)
    for (const unseen of ['penalty-area-top', 'goal-area-top', 'build-out-line-centre'] as const) {
      expect(found).not.toContain(unseen)
    }
    expect(found).toContain('penalty-arc-top')
    expect(found).toContain('centre-mark')
  })

  test('an arc is found only where mark and area are painted', () => {
    expect(namesOf(ground('half', { 'penalty-mark': 'painted' }))).toEqual(['penalty-mark'])
    expect(namesOf(ground('half', { 'penalty-mark': 'flags', 'penalty-area': 'painted' }))).not.toContain(
      'penalty-arc-top',
    )
    expect(namesOf(ground('half', { 'penalty-mark': 'painted', 'penalty-area': 'painted' }))).toContain(
      'penalty-arc-top',
    )
  })

  test('a build-out line, painted or flagged, shows where it meets the touchlines', () => {
    for (const finding of ['painted', 'flags'] as const) {
      const found = landmarksFound(ground('half', { 'build-out-line': finding }))
      expect(found.map((each) => [each.landmark, each.finding])).toEqual([
        ['build-out-line-left', finding],
        ['build-out-line-right', finding],
      ])
    }
  })

  test('a plain rectangle shows its corners and a line across its middle, never the areas of a pitch', () => {
    const everything = Object.fromEntries(MARKINGS.map((marking) => [marking, 'painted'])) as Space['markings']
    expect(namesOf(ground('plain', everything))).toEqual([
      'corner-left',
      'corner-right',
      'halfway-left',
      'halfway-right',
      'far-corner-left',
      'far-corner-right',
    ])
  })

  test('a half shows its own corners; the ends of its halfway line only if that line is found', () => {
    expect(namesOf(ground('half', { boundary: 'painted' }))).toEqual(['corner-left', 'corner-right'])
    expect(namesOf(ground('half', { boundary: 'flags', halfway: 'painted' }))).toEqual([
      'corner-left',
      'corner-right',
      'halfway-left',
      'halfway-right',
    ])
  })
})

import { describe, expect, test } from 'vitest'
import { distance, point, rectangle } from '../geometry'
import { millimetres } from '../quantities'
import { nominalSpace } from './nominal-space'
import { pitchMarkings } from './pitch-markings'
import { MARKINGS, type Space } from './space'

const sevens = nominalSpace('us-7v7')
const noLines = Object.fromEntries(MARKINGS.map((marking) => [marking, 'none'])) as Space['markings']

function countOf(space: Space): Readonly<Record<string, number>> {
  const counts: Record<string, number> = {}
  for (const { marking } of pitchMarkings(space)) counts[marking] = (counts[marking] ?? 0) + 1
  return counts
}

describe('what is drawn of a space', () => {
  test('a whole pitch has two of everything at its ends and one of everything in its middle', () => {
    expect(countOf(sevens)).toEqual({
      boundary: 1,
      'goal-area': 2,
      'penalty-area': 2,
      'penalty-mark': 2,
      'penalty-arc': 2,
      'build-out-line': 2,
      'corner-arc': 4,
      halfway: 1,
      'centre-mark': 1,
      'centre-circle': 1,
      goal: 2,
    })
  })

  test('a half shows its own end, and half a circle at its edge', () => {
    const half: Space = { ...sevens, covers: 'half', lengthMm: millimetres(27_432) }
    const { halfway: atEdge, ...counts } = countOf({ ...half, goals: half.goals.slice(0, 1) })
    expect(atEdge).toBeUndefined()
    expect(counts).toMatchObject({
      'penalty-area': 1,
      'build-out-line': 1,
      'corner-arc': 2,
      'centre-circle': 1,
      goal: 1,
    })
    const circle = pitchMarkings(half).find((marking) => marking.marking === 'centre-circle')
    if (circle?.kind !== 'arc') expect.unreachable('half a circle is an arc')
    else expect([circle.fromDegrees, circle.toDegrees]).toEqual([90, 270])
  })

  test('a plain rectangle without lines is its edge, and the goals that stand there', () => {
    const plain: Space = { ...sevens, covers: 'plain', markings: noLines }
    expect(pitchMarkings(plain)).toEqual([
      { kind: 'rect', marking: 'boundary', finding: 'none', area: rectangle(0, 54.864, -18.288, 18.288) },
      {
        kind: 'goal',
        marking: 'goal',
        finding: 'painted',
        end: 'own',
        left: point(0, -2.8195),
        right: point(0, 2.8195),
        movable: false,
      },
      {
        kind: 'goal',
        marking: 'goal',
        finding: 'painted',
        end: 'far',
        left: point(54.864, -2.8195),
        right: point(54.864, 2.8195),
        movable: false,
      },
    ])
  })

  test('an area wider than the space is drawn as far as the space goes', () => {
    const narrow: Space = { ...sevens, covers: 'half', widthMm: millimetres(20_000) }
    const area = pitchMarkings(narrow).filter((marking) => marking.marking === 'penalty-area')
    expect(area).toHaveLength(1)
    const [top] = area
    if (top?.kind !== 'line') return expect.unreachable('what is left of the area is its top line')
    expect(distance(top.from, point(10.973, -10))).toBeLessThan(1e-9)
    expect(distance(top.to, point(10.973, 10))).toBeLessThan(1e-9)
  })

  test('what is flagged says so, for the drawing to dash it', () => {
    const flagged: Space = { ...sevens, markings: { ...noLines, 'build-out-line': 'flags' } }
    const lines = pitchMarkings(flagged).filter((marking) => marking.marking === 'build-out-line')
    expect(lines.map((line) => line.finding)).toEqual(['flags', 'flags'])
  })

  test('the penalty mark is drawn at the club’s choice', () => {
    const dot = pitchMarkings(sevens, { penaltyMarkYards7v7: 8 }).find((marking) => marking.kind === 'dot')
    expect(dot).toEqual({ kind: 'dot', marking: 'penalty-mark', finding: 'painted', at: point(7.315, 0) })
  })

  test('no arc is drawn where the mark or the area is only flagged', () => {
    const area: Space = { ...sevens, markings: { ...sevens.markings, 'penalty-area': 'flags' } }
    const mark: Space = { ...sevens, markings: { ...sevens.markings, 'penalty-mark': 'flags' } }
    expect([countOf(area)['penalty-arc'], countOf(mark)['penalty-arc']]).toEqual([undefined, undefined])
  })
})

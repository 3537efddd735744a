import { describe, expect, test } from 'vitest'
import { checkShape, startingPositions } from '../pattern'
import { buildOutLine, landmarkPoint, nominalSpace } from '../pitch'
import { metresOf } from '../quantities'
import { checkPattern } from './check-pattern'
import { attackExamples, habitExamples } from './examples/attacks'
import { buildOutExamples } from './examples/build-out'
import { combinationExamples } from './examples/combinations'
import type { Example, Said } from './examples/example'
import { restartExamples } from './examples/restarts'
import { placerFor } from './places'

const examples: readonly Example[] = [
  ...buildOutExamples,
  ...restartExamples,
  ...combinationExamples,
  ...attackExamples,
  ...habitExamples,
]

function saidOf({ document, options }: Example): readonly Said[] {
  const { notes } = checkPattern(document, nominalSpace(document.formatId), options)
  return notes.map(({ code, stepId, position }): Said => [code, stepId, position])
}

/** A set: a coach points at things in no order. */
function sorted(said: readonly Said[]): readonly string[] {
  return said.map((each) => JSON.stringify(each)).sort()
}

test.each(examples.map((each) => [each.title, each] as const))(
  '%s: exactly what is written beside it',
  (_, example) => {
    expect(checkShape(example.document)).toEqual([])
    expect(sorted(saidOf(example))).toEqual(sorted(example.differs?.checkSays ?? example.coachSays))
  },
)

describe('coach and check', () => {
  test('differ only where it is explained, and explain only where they differ', () => {
    for (const { coachSays, differs } of examples) {
      if (differs === undefined) continue
      expect(differs.because.length).toBeGreaterThan(40)
      expect(sorted(differs.checkSays)).not.toEqual(sorted(coachSays))
    }
  })

  test('agree on nearly all of thirty patterns and more', () => {
    const agreed = examples.filter((each) => each.differs === undefined).length
    expect(examples.length).toBeGreaterThanOrEqual(30)
    expect(agreed / examples.length).toBeGreaterThan(0.8)
  })
})

// Common practice, no source: where a 2-3-1 of U.S. 7v7 stands to build out.
describe('habit: the build-out places of a 2-3-1 in 7v7 (common practice, no source)', () => {
  const space = nominalSpace('us-7v7')
  const base = buildOutExamples[0]!.document
  const positions = startingPositions('us-7v7', '2-3-1')!.value
  const place = placerFor({ ...base, positions }, space)
  const placeOf = (position: string) => place(positions.find((each) => each.position === position)!.spot)

  test('the centre backs start level with the top of the penalty area, wide of the goal', () => {
    const top = landmarkPoint(space, 'penalty-area-top')!.x
    for (const name of ['LCB', 'RCB']) {
      expect(placeOf(name).x).toBeCloseTo(top, 6)
      expect(Math.abs(placeOf(name).y)).toBeGreaterThan(metresOf(space.widthMm) / 6)
    }
  })

  test('the wide players stand where the build-out line meets the touchline, to a step', () => {
    for (const name of ['LW', 'RW']) {
      expect(placeOf(name).x).toBeCloseTo(buildOutLine(space)!, 6)
      expect(metresOf(space.widthMm) / 2 - Math.abs(placeOf(name).y)).toBeLessThanOrEqual(2)
    }
  })

  test('the midfielder stands by the arc and the striker high, both in the middle', () => {
    expect(placeOf('CM')).toEqual(landmarkPoint(space, 'penalty-arc-top'))
    expect(placeOf('ST').x).toBeGreaterThan(landmarkPoint(space, 'centre-mark')!.x)
    expect(placeOf('ST').y).toBe(0)
  })
})

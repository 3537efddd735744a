import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { profileFor, timelineOf } from '../check'
import { nominalSpace } from '../pitch'
import { millimetres } from '../quantities'
import { actorOf, receiverOf } from './actions'
import type { BallAction, PatternDocument, Position, Step } from './document'
import { patternArbitrary } from './fixtures/arbitrary-pattern'
import { samplePattern } from './fixtures/sample-pattern'
import { mirrorPattern, mirrorPosition } from './mirror'
import { checkShape } from './rules'
import { scriptSentences } from './script'
import { UNIT_SIZES, unitForm } from './unit-form'

const spotAt = (up: number, right: number) => ({
  landmark: 'penalty-mark' as const,
  upMm: millimetres(up * 1000),
  rightMm: millimetres(right * 1000),
})

function pass(from: Position, to: Position): BallAction {
  return { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' }
}

function stepOf(stepId: string, action: BallAction, runs: Step['runs'] = []): Step {
  return { stepId, action, runs, point: '' }
}

/** Seven players; the ball comes to five of them. */
const chain: PatternDocument = {
  ...samplePattern,
  positions: (['GK', 'LCB', 'RCB', 'CM', 'LW', 'RW', 'ST'] as const).map((position, index) => ({
    position,
    spot: spotAt(index * 3, index - 3),
  })),
  targets: [],
  obstacles: [],
  looks: [],
  steps: [
    stepOf('s1', pass('GK', 'LCB')),
    stepOf('s2', pass('LCB', 'CM'), [{ position: 'RW', to: spotAt(18, 4), start: 'with-the-ball' }]),
    stepOf('s3', pass('CM', 'RCB')),
    stepOf('s4', pass('RCB', 'RW')),
    stepOf('s5', pass('RW', 'ST')),
  ],
}

describe('the form of a pattern for a few players', () => {
  test('keeps the first steps and ends at a gate where the missing receiver would have met the ball', () => {
    const { document, players, gatesFor } = unitForm(chain, 4)
    expect(players).toEqual(['GK', 'LCB', 'RCB', 'CM'])
    expect(gatesFor).toEqual(['RW'])
    expect(document.steps.map((step) => step.stepId)).toEqual(['s1', 's2', 's3', 's4'])
    expect(document.steps[3]?.action).toEqual({ kind: 'shot', by: 'RCB', target: 'gate-s4' })
    expect(document.targets).toEqual([{ targetId: 'gate-s4', kind: 'gate', spot: spotAt(18, 4), widthMm: 3000 }])
  })

  test('reads as a ball through the gate, and rolls as a pass', () => {
    const { document } = unitForm(chain, 4)
    expect(scriptSentences(document).at(-1)?.text).toBe('RCB plays it through the gate.')
    const { steps } = timelineOf(document, nominalSpace(document.formatId), profileFor('U10'), 'normal')
    const through = steps.at(-1)
    expect(through?.shortBy).toBe(0)
    expect(through?.flight.kind === 'rolls' && through.flight.ball.releaseSpeed).toBeLessThan(8)
  })

  test('is the whole pattern where every player of the ball is there', () => {
    const five = { ...chain, steps: chain.steps.slice(0, 4) }
    const { document, gatesFor } = unitForm(five, 5)
    expect(gatesFor).toEqual([])
    expect(document.steps).toEqual(five.steps)
  })

  test('gives places left to those who run before those who only stand', () => {
    const short = { ...chain, steps: chain.steps.slice(0, 2) }
    expect(unitForm(short, 4).players).toEqual(['GK', 'LCB', 'CM', 'RW'])
  })

  test('ends an answer at a gate too, and its way back with it', () => {
    const look = {
      lookId: 'l1',
      stepId: 's3',
      by: 'CM',
      answers: [
        { sign: 'presser-stays-off', about: 'ST', steps: [stepOf('a1', pass('CM', 'ST'))], rejoins: 's5' },
        { sign: 'all-shut', about: null, steps: [stepOf('a2', pass('CM', 'LCB'))], rejoins: 'exit' },
      ],
    } as const
    const { document, gatesFor } = unitForm({ ...chain, looks: [look] }, 4)
    expect(gatesFor).toEqual(['RW', 'ST'])
    expect(document.looks[0]?.answers[0]).toMatchObject({ about: null, rejoins: 'exit' })
    expect(document.looks[0]?.answers[0]?.steps[0]?.action).toEqual({ kind: 'shot', by: 'CM', target: 'gate-a1' })
    expect(checkShape(document)).toEqual([])
  })

  test('meets the structural rules, names only its players and has their number, whatever the pattern', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.constantFrom(...UNIT_SIZES), (pattern, size) => {
        const { document, players } = unitForm(pattern, size)
        expect(checkShape(document)).toEqual([])
        expect(players.length).toBe(Math.min(size, pattern.positions.length))
        for (const step of document.steps) {
          expect(players).toContain(actorOf(step.action))
          const receiver = receiverOf(step.action)
          if (receiver !== null) expect(players).toContain(receiver)
          for (const run of step.runs) expect(players).toContain(run.position)
        }
      }),
    )
  })

  test('never has fewer steps with one player more', () => {
    fc.assert(
      fc.property(patternArbitrary, (pattern) => {
        const [four, five, six] = UNIT_SIZES.map((size) => unitForm(pattern, size).document.steps.length)
        expect(four).toBeLessThanOrEqual(five ?? 0)
        expect(five).toBeLessThanOrEqual(six ?? 0)
      }),
    )
  })

  test('of the mirrored pattern is the mirrored form', () => {
    fc.assert(
      fc.property(patternArbitrary, fc.constantFrom(...UNIT_SIZES), (pattern, size) => {
        const form = unitForm(pattern, size)
        const mirrored = unitForm(mirrorPattern(pattern), size)
        expect(mirrored.document).toEqual(mirrorPattern(form.document))
        expect(mirrored.players).toEqual(form.players.map(mirrorPosition))
      }),
    )
  })
})

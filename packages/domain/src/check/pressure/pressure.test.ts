import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { distance, point } from '../../geometry'
import type { BallAction, PatternDocument, Position, Step } from '../../pattern'
import { mirrorPattern, mirrorPosition } from '../../pattern'
import { patternArbitrary } from '../../pattern/fixtures/arbitrary-pattern'
import { samplePattern } from '../../pattern/fixtures/sample-pattern'
import { nominalSpace } from '../../pitch'
import { millimetres, seconds } from '../../quantities'
import { type Behaviour, PRESS_BEHAVIOURS } from './behaviours'
import { durationToStand } from './moving-opponent'
import { press } from './press'
import { choicesOf, prepare, pressureOn } from './pressure'
import type { StartPlace } from './start-places'
import { sayBehaviours, sayMend, sayWorksAgainst } from './words'

const space = nominalSpace('us-7v7')
const chase: Behaviour = PRESS_BEHAVIOURS['everyone-chases']

function pass(from: Position, to: Position, touches: 1 | 2 = 2): BallAction {
  return { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches, foot: 'either' }
}

const stepOf = (stepId: string, action: BallAction): Step => ({ stepId, action, runs: [], point: '' })
const spotAt = (up: number, right: number) => ({
  landmark: 'goal-centre' as const,
  upMm: millimetres(up * 1000),
  rightMm: millimetres(right * 1000),
})

/** Along a line up the middle: GK, 10 m to CM, 10 m on to ST, and RCB 12 m beside GK. */
const straight: PatternDocument = {
  ...samplePattern,
  restart: 'open-play',
  positions: [
    { position: 'GK', spot: spotAt(2, 0) },
    { position: 'CM', spot: spotAt(12, 0) },
    { position: 'ST', spot: spotAt(22, 0) },
    { position: 'RCB', spot: spotAt(2, 12) },
  ],
  inPossession: [],
  onLoss: [],
  obstacles: [],
  targets: [],
  looks: [],
  steps: [stepOf('s1', pass('GK', 'CM')), stepOf('s2', pass('CM', 'ST'))],
}

const startAt = (x: number, y: number): StartPlace => ({ at: point(x, y), obstacleId: null, near: null })

function pressed(document: PatternDocument, starts: readonly StartPlace[], behaviour = chase) {
  const { play, setting } = prepare(document, space, {})
  return press(play, starts, behaviour, setting)
}

describe('a press', () => {
  test('far away stops nothing, and in the lane cuts the ball out', () => {
    expect(pressed(straight, [startAt(45, 15)])).toBeNull()
    expect(pressed(straight, [startAt(11, 0)])).toMatchObject({ kind: 'cut-out', stepId: 's1', by: 0 })
  })

  // Source: laws of motion under constant acceleration: speeding up and braking alike, 2·√(D/A) to run D and stand.
  test('tackles from just inside the distance that a reaction, a run and a stop take, and not from just outside', () => {
    const { play, setting } = prepare(straight, space, {})
    const next = play.timeline.steps[1]!.startsAt
    const time = next - setting.reaction
    const { acceleration, topSpeed } = setting.runner
    // Long enough for top speed: both ramps take V/A and V²/A together.
    const ramps = topSpeed ** 2 / acceleration
    const run =
      time < (2 * topSpeed) / acceleration
        ? (acceleration * time ** 2) / 4
        : ramps + topSpeed * (time - (2 * topSpeed) / acceleration)
    const beside = (away: number) => startAt(12, run + setting.reach + away)
    expect(durationToStand(setting.runner, 0, run)).toBeCloseTo(time, 9)
    // One touch further along the lane they may still cut out the second ball; here only the first step counts.
    expect(pressed(straight, [beside(-0.05)])).toMatchObject({ kind: 'tackled', stepId: 's1' })
    expect(pressed(straight, [beside(0.05)])?.stepId).not.toBe('s1')
  })

  test('is first to a ball whose receiver is late', () => {
    const into = { kind: 'space', spot: spotAt(14, 12) } as const
    const step: Step = {
      stepId: 's1',
      action: { ...pass('GK', 'RCB'), into } as BallAction,
      runs: [{ position: 'RCB', to: spotAt(14, 12), start: 'after-the-ball' }],
      point: '',
    }
    const late = { ...straight, steps: [step] }
    const { play } = prepare(late, space, {})
    const timed = play.timeline.steps[0]!
    expect(timed.receivedAt - timed.ballArrivesAt).toBeGreaterThan(0.5)
    expect(pressed(late, [startAt(33, 12)])).toMatchObject({ kind: 'first-to-it', stepId: 's1' })
  })

  test('goes past whom a dribble names, and nobody else', () => {
    const obstacle = { obstacleId: 'x1', kind: 'opponent', spot: spotAt(20, 0) } as const
    const dribble = stepOf('s2', { kind: 'dribble-past', by: 'CM', to: spotAt(24, 0), past: 'x1' })
    const document = { ...straight, obstacles: [obstacle], steps: [{ ...straight.steps[0]! }, dribble] }
    const waiting = { ...startAt(20, 0) }
    const still: Behaviour = (cue) => cue.opponents
    expect(pressed(document, [{ ...waiting, obstacleId: 'x1' }], still)).toBeNull()
    expect(pressed(document, [waiting], still)).toMatchObject({ kind: 'tackled', stepId: 's2' })
  })

  test('one more who chases never helps a pattern without looks', () => {
    const places = fc.record({ x: fc.integer({ min: 0, max: 50 }), y: fc.integer({ min: -18, max: 18 }) })
    fc.assert(
      fc.property(patternArbitrary, fc.array(places, { minLength: 1, maxLength: 3 }), places, (drawn, some, more) => {
        const document = { ...drawn, looks: [] }
        const starts = some.map(({ x, y }) => startAt(x, y))
        const found = pressed(document, starts)
        const other = pressed(document, [...starts, startAt(more.x, more.y)])
        if (found !== null) expect(other?.at).toBeLessThanOrEqual(found.at)
      }),
      { numRuns: 300 },
    )
  })

  test('by slower or duller opponents never comes sooner to the first ball', () => {
    const one = { ...straight, steps: straight.steps.slice(0, 1) }
    const { play, setting } = prepare(one, space, {})
    const place = fc.record({ x: fc.integer({ min: 0, max: 50 }), y: fc.integer({ min: -18, max: 18 }) })
    fc.assert(
      fc.property(place, fc.double({ min: 0, max: 1, noNaN: true }), ({ x, y }, more) => {
        const dull = { ...setting, reaction: seconds(setting.reaction + more) }
        const found = press(play, [startAt(x, y)], chase, dull)
        if (found !== null) expect(press(play, [startAt(x, y)], chase, setting)).not.toBeNull()
      }),
    )
  })
})

describe('the pressure on a pattern', () => {
  test('gives a look its use: with an open answer it works where the bare pattern does not', () => {
    const withLook: PatternDocument = {
      ...straight,
      obstacles: [{ obstacleId: 'x1', kind: 'opponent', spot: spotAt(11, -1) }],
      looks: [
        {
          lookId: 'l1',
          stepId: 's1',
          by: 'GK',
          answers: [
            { sign: 'lane-shut', about: 'CM', steps: [stepOf('a1', pass('GK', 'RCB'))], rejoins: 'exit' },
            {
              sign: 'all-shut',
              about: null,
              steps: [stepOf('a2', { ...pass('GK', 'ST'), height: 'air' } as BallAction)],
              rejoins: 'exit',
            },
          ],
        },
      ],
    }
    const bare = { ...withLook, looks: [] }
    const starts = [{ ...startAt(11, -1), obstacleId: 'x1' }]
    expect(pressed(bare, starts)).toMatchObject({ stepId: 's1' })
    expect(pressed(withLook, starts)).toBeNull()
  })

  test('names what mends a break, and the mend holds against the same opponents', () => {
    const report = pressureOn(straight, space)
    const stopped = report.firstStopped
    expect(stopped).not.toBeNull()
    for (const { stopped: each } of report.behaviours) {
      for (const mend of each?.mends ?? []) {
        if (mend.kind === 'look') expect(mend.free).toContain('RCB')
        expect(sayMend(straight, mend)).toMatch(/step \d/)
      }
    }
    expect(report.behaviours.some((each) => (each.stopped?.mends.length ?? 0) > 0)).toBe(true)
  })

  test('holds opponents back as the law does: never inside the penalty area or before the build-out line at a goal kick', () => {
    const { places } = pressureOn({ ...samplePattern, restart: 'goal-kick' }, space)
    expect(places.length).toBeGreaterThan(0)
    for (const { at } of places) expect(at.x).toBeGreaterThanOrEqual(19.2)
  })

  test('is worth less to opponents who must wait for the first touch', () => {
    const document = { ...straight, restart: 'goalkeeper-hands' } as const
    const early = pressureOn(document, space, { released: 'ball-in-play' })
    const late = pressureOn(document, space, { released: 'first-touch' })
    expect(late.worksAgainst).toBeGreaterThanOrEqual(early.worksAgainst)
    expect(late.firstStopped?.at ?? 99).toBeGreaterThan(early.firstStopped?.at ?? 0)
  })

  test('follows the club where opponents may cross only at the first touch after a release from the hands', () => {
    const touched = { penaltyMarkYards7v7: 10, buildOutCrossing7v7: 'touched' } as const
    const hands = { ...straight, restart: 'goalkeeper-hands' } as const
    const first = pressureOn(hands, space, { choices: touched })
    expect(first).toEqual(pressureOn(hands, space, { choices: touched, released: 'first-touch' }))
    expect(first).not.toEqual(pressureOn(hands, space, { choices: touched, released: 'ball-in-play' }))
    const kick = { ...straight, restart: 'goal-kick' } as const
    expect(pressureOn(kick, space, { choices: touched })).toEqual(pressureOn(kick, space))
  })

  test('is mirrored with its pattern', () => {
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        const report = pressureOn(document, space, { opponentsMax: 2 })
        const mirrored = pressureOn(mirrorPattern(document), space, { opponentsMax: 2 })
        const outline = (each: typeof report) =>
          each.behaviours.map(({ worksAgainst, stopped }) => [worksAgainst, stopped?.stepId, stopped?.kind])
        expect(outline(mirrored)).toEqual(outline(report))
        const from = report.firstStopped?.cameFrom.near ?? null
        expect(mirrored.firstStopped?.cameFrom.near ?? null).toBe(from === null ? null : mirrorPosition(from))
      }),
      { numRuns: 40 },
    )
  })

  test('says nothing that is no number, whatever the pattern, and stays bounded', () => {
    fc.assert(
      fc.property(patternArbitrary, (document) => {
        const report = pressureOn(document, space, { opponentsMax: 3 })
        const words = [sayWorksAgainst(document, report), ...sayBehaviours(document, report)].join(' ')
        expect(words).not.toMatch(/NaN|Infinity|undefined|null/)
        for (const { stopped } of report.behaviours) {
          if (stopped === null) continue
          expect(Number.isFinite(stopped.at)).toBe(true)
          expect(distance(stopped.where, point(0, 0))).toBeLessThan(200)
        }
        expect(report.places.length).toBeLessThanOrEqual(8)
      }),
      { numRuns: 40 },
    )
  })

  test('of a pattern without steps is none', () => {
    const report = pressureOn({ ...straight, steps: [] }, space)
    expect(report.firstStopped).toBeNull()
  })

  test('reads as a director would say it', () => {
    const report = pressureOn(straight, space)
    expect(sayWorksAgainst(straight, report)).toMatch(
      /^(Against 1 it breaks|Works against \d; against \d it breaks) at step \d\.$/,
    )
    expect(sayBehaviours(straight, report)).toHaveLength(4)
  })
})

test('every set of so many is chosen once', () => {
  expect(choicesOf(['a', 'b', 'c', 'd'], 2).map((each) => each.join(''))).toEqual(['ab', 'ac', 'ad', 'bc', 'bd', 'cd'])
  expect(choicesOf([1, 2, 3, 4, 5, 6, 7, 8], 4)).toHaveLength(70)
})

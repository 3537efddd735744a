import { describe, expect, test } from 'vitest'
import { point } from '../../geometry'
import type { Answer, PatternDocument, Position } from '../../pattern'
import { listBranches, mirrorPattern } from '../../pattern'
import { passStep, samplePattern, spotAt } from '../../pattern/fixtures/sample-pattern'
import { mirrorPoint, nominalSpace } from '../../pitch'
import { seconds } from '../../quantities'
import { AGE_PROFILES } from '../profiles'
import { playStates } from '../timeline'
import { type CoverOptions, coverRules } from './cover-rules'
import { takenAt } from './holes'
import { lookLogic } from './look-state'
import type { PlaceGrid } from './place-grid'
import { sceneOf } from './scene'
import type { Sign } from './signs'

const space = nominalSpace('us-7v7')

/**
 * RCB has the ball at (10, 8), RW waits at (17, 15), LCB at (10, −6); the others are far off. The only answer with a sign is
 * A, back to the goalkeeper; the ball as drawn goes to RW. The exit is a ball to LCB.
 */
function patternWith(sign: Sign, about: Position | null): PatternDocument {
  const at = (up: number, right: number) => spotAt('goal-centre', up, right)
  const spots: Readonly<Record<Position, ReturnType<typeof at>>> = {
    GK: at(1, 0),
    LCB: at(10, -6),
    RCB: at(10, 8),
    LW: at(40, -16),
    CM: at(45, 0),
    RW: at(17, 15),
    ST: at(50, 3),
  }
  const answer: Answer = { sign, about, steps: [passStep('a1', 'RCB', 'GK')], rejoins: 'exit' }
  const exit: Answer = { sign: 'all-shut', about: null, steps: [passStep('a2', 'RCB', 'LCB')], rejoins: 'exit' }
  return {
    ...samplePattern,
    restart: 'open-play',
    positions: samplePattern.positions.map((each) => ({ ...each, spot: spots[each.position]! })),
    steps: [passStep('s1', 'RCB', 'RW')],
    looks: [{ lookId: 'l1', stepId: 's1', by: 'RCB', answers: [answer, exit] }],
  }
}

/** What is taken with X at these places, as up and right of the middle of the goal. */
function takenWith(document: PatternDocument, ...places: readonly (readonly [number, number])[]): string | null {
  return takenAgainst({}, document, ...places)
}

function takenAgainst(
  options: CoverOptions,
  document: PatternDocument,
  ...places: readonly (readonly [number, number])[]
): string | null {
  const rules = coverRules(document, space, options)
  const scene = sceneOf(rules, playStates(document, rules.play), listBranches(document), document.looks[0]!)
  const grid: PlaceGrid = places.map(([up, right], index) => ({ at: point(up, right), row: index, column: 0 }))
  const way = takenAt(lookLogic(scene, rules, grid), [...grid.keys()])
  return way === null ? null : (scene.ways[way]!.letter ?? 'drawn')
}

/** Places that shut no way at all, so that only the sign decides between A and the ball as drawn. */
const FAR = [30, -16] as const

describe('the sign', () => {
  test('"presser from inside" shows when the nearest X who can press stands nearer the middle', () => {
    const document = patternWith('presser-from-inside', null)
    expect(takenWith(document, [15.5, 7])).toBe('A')
    expect(takenWith(document, [15.5, 9])).not.toBe('A')
    // Less than half a metre to the side: straight on, from neither.
    expect(takenWith(document, [15.5, 7.6])).not.toBe('A')
    // Six metres and more away nobody presses.
    expect(takenWith(document, [16.1, 7])).not.toBe('A')
    // The nearer one is the presser.
    expect(takenWith(document, [15.5, 7], [15, 9])).not.toBe('A')
    expect(takenWith(document, [15.5, 9.2], [15, 7])).toBe('A')
  })

  test('"presser from outside" shows when they stand nearer the touchline', () => {
    const document = patternWith('presser-from-outside', null)
    expect(takenWith(document, [15.5, 9])).toBe('A')
    expect(takenWith(document, [15.5, 7])).not.toBe('A')
    expect(takenWith(document, [15.5, 8.4])).not.toBe('A')
    expect(takenWith(document, FAR)).toBe('drawn')
  })

  test('inside and outside change sides with the mirrored pattern', () => {
    for (const sign of ['presser-from-inside', 'presser-from-outside'] as const) {
      const document = patternWith(sign, null)
      const mirrored = mirrorPattern(document)
      for (const right of [7, 9]) {
        const { x, y } = mirrorPoint(point(15.5, right))
        expect(takenWith(mirrored, [x, y])).toBe(takenWith(document, [15.5, right]))
      }
    }
  })

  test('of two pressers equally near, the one from inside counts', () => {
    expect(takenWith(patternWith('presser-from-inside', null), [15, 7], [15, 9])).toBe('A')
    expect(takenWith(patternWith('presser-from-outside', null), [15, 7], [15, 9])).not.toBe('A')
  })

  test('a player in the middle of the pitch is pressed from neither side', () => {
    const document = patternWith('presser-from-inside', null)
    const positions = document.positions.map((each) =>
      each.position === 'RCB' ? { ...each, spot: spotAt('goal-centre', 10, 1.9) } : each,
    )
    expect(takenWith({ ...document, positions }, [15.5, 0.5])).not.toBe('A')
  })

  test('"presser stays off" shows while nobody is within six metres of the player on the ball', () => {
    const document = patternWith('presser-stays-off', null)
    expect(takenWith(document, FAR)).toBe('A')
    expect(takenWith(document, [15.9, 8])).not.toBe('A')
    expect(takenWith(document, [16, 8])).toBe('A')
    expect(takenWith(document, FAR, [15.9, 8])).not.toBe('A')
  })

  test('"presser comes at" a position shows when an X can be there within a second of running', () => {
    // A U10 player runs 5.4 m in a second and reaches 0.6 m further.
    const document = patternWith('presser-comes-at', 'CM')
    expect(takenWith(document, [45, 5.9])).toBe('A')
    expect(takenWith(document, [45, 6.1])).toBe('drawn')
    expect(takenWith(document, FAR, [45, 5.9])).toBe('A')
  })

  test('"presser comes at" without a position speaks of the player on the ball', () => {
    const document = patternWith('presser-comes-at', null)
    expect(takenWith(document, [15.9, 8])).toBe('A')
    expect(takenWith(document, [45, 5])).toBe('drawn')
  })

  test('"the way is shut" shows when an X shuts the ball to that position, drawn or not', () => {
    const drawn = patternWith('lane-shut', 'RW')
    expect(takenWith(drawn, [17, 12])).toBe('A')
    expect(takenWith(drawn, FAR)).toBe('drawn')
    const other = patternWith('lane-shut', 'LCB')
    expect(takenWith(other, [18, -10])).toBe('A')
    expect(takenWith(other, [17, 12])).toBe('B')
    expect(takenWith(patternWith('lane-shut', null), [17, 12])).toBe('A')
  })

  test('"the way is shut" to a player no ball along the ground can reach, whoever stands where; to oneself never', () => {
    const document = patternWith('lane-shut', 'ST')
    const positions = document.positions.map((each) =>
      each.position === 'ST' ? { ...each, spot: spotAt('far-goal-centre', 100, 0) } : each,
    )
    const asleep = { ...AGE_PROFILES.U10, reaction: { ...AGE_PROFILES.U10.reaction, value: seconds(600) } }
    expect(takenWith({ ...document, positions }, FAR)).toBe('A')
    expect(takenAgainst({ opponents: asleep }, { ...document, positions }, FAR)).toBe('A')
    expect(takenAgainst({ opponents: asleep }, document, FAR)).toBe('drawn')
    expect(takenWith(patternWith('lane-shut', 'RCB'), [17, 12])).toBe('B')
  })

  test('"two on one" shows with one X near the player on the ball or the team-mate, not with none and not with two', () => {
    // RW is 9.9 m away: within ten.
    const document = patternWith('two-on-one', 'RW')
    expect(takenWith(document, [15.5, 9])).toBe('A')
    expect(takenWith(document, [22, 15])).toBe('A')
    expect(takenWith(document, FAR)).toBe('drawn')
    expect(takenWith(document, [15.5, 9], [22, 15])).not.toBe('A')
    expect(takenWith(document, [15.5, 9], FAR)).toBe('A')
    expect(takenWith(document, [15.5, 9], [15.5, 10], FAR)).not.toBe('A')
    // The nearest outfield player where nobody is named; a team-mate too far off makes no two.
    expect(takenWith(patternWith('two-on-one', null), [22, 15])).toBe('A')
    expect(takenWith(patternWith('two-on-one', 'CM'), [15.5, 9])).not.toBe('A')
    expect(takenWith(patternWith('two-on-one', 'RCB'), [15.5, 9])).not.toBe('A')
  })

  test('"all is shut" is asked last: after the ball as drawn, whatever its place among the answers', () => {
    const document = patternWith('all-shut', null)
    expect(takenWith(document, FAR)).toBe('drawn')
    expect(takenWith(document, [17, 12])).toBe('A')
    // The ball back is shut too: then the exit, and with that shut too, nothing.
    expect(takenWith(document, [17, 12], [1, 10])).toBe('B')
    expect(takenWith(document, [17, 12], [1, 10], [10, -5])).toBe(null)
  })
})

import { distance, type Point, point } from '../../geometry'
import type { Position } from '../../pattern'
import { metres, millimetresOf, millisecondsOf, type Seconds, seconds } from '../../quantities'
import type { TimedStep } from '../timed-step'
import { playersAt, type Timeline } from '../timeline'
import { arrivalAt, durationOver, headingFor, type MovingOpponent, sendTo, whereIs } from './moving-opponent'
import type { StartPlace } from './start-places'

/** The stated ways in which opponents press; which of them will come nobody knows, so a pattern is tried against all. */
export const BEHAVIOURS = ['everyone-chases', 'shuts-inside', 'shuts-outside', 'man-for-man'] as const
export type BehaviourName = (typeof BEHAVIOURS)[number]

/** What opponents know when a ball is played, and from when they act on it. */
export type Cue = {
  readonly opponents: readonly MovingOpponent[]
  readonly starts: readonly StartPlace[]
  readonly step: TimedStep
  readonly timeline: Timeline
  readonly cue: Seconds
}

/** Where everybody runs once a ball is played: the same opponents, on their new ways. */
export type Behaviour = (cue: Cue) => readonly MovingOpponent[]

export const PRESS_BEHAVIOURS = {
  'everyone-chases': ({ opponents, step, cue }) => opponents.map((each) => sendTo(each, step.to, cue)),
  'shuts-inside': (cue) => nearestCurves(cue, 'inside'),
  'shuts-outside': (cue) => nearestCurves(cue, 'outside'),
  'man-for-man': markMen,
} satisfies Record<BehaviourName, Behaviour>

/** How far beside the receiver a curved run passes: a ball to that side has to go through the runner (habit). */
const CURVE_METRES = 2.5

/** The nearest curves to the ball over the side to be shut; the others stay, and take only what comes past them. */
function nearestCurves({ opponents, step, cue }: Cue, side: 'inside' | 'outside'): readonly MovingOpponent[] {
  const reach = metres(0)
  const nearest = opponents.reduce<number>((least, each, index) => {
    const arrives = (opponent: MovingOpponent) => millisecondsOf(arrivalAt(opponent, step.to, cue, reach))
    return arrives(each) < arrives(opponents[least]!) ? index : least
  }, 0)
  return opponents.map((each, index) =>
    index === nearest ? curveTo(each, step.to, beside(step.to, side), cue) : sendTo(each, whereIs(each, cue), cue),
  )
}

/** Inside is towards the middle of the pitch; a receiver in the very middle has neither side, and is run at straight. */
function beside(place: Point, side: 'inside' | 'outside'): Point {
  const inward = -Math.sign(millimetresOf(metres(place.y)))
  return point(place.x, place.y + CURVE_METRES * (side === 'inside' ? inward : -inward))
}

function curveTo(opponent: MovingOpponent, to: Point, over: Point, cue: Seconds): MovingOpponent {
  const first = sendTo(opponent, over, cue)
  const way = first.ways.at(-1)!
  return sendTo(first, to, seconds(cue + durationOver(first.runner, way.startSpeed, way.length)))
}

/** A marker stands this much nearer to the goal that is defended (habit). */
const MARKING_METRES = 1.5

/** Each to their own player: at the ball when it comes to that player, goal-side of them while it does not. */
function markMen({ opponents, starts, step, timeline, cue }: Cue): readonly MovingOpponent[] {
  const men = assignMen(starts, timeline)
  const places = new Map(playersAt(timeline, step.ballArrivesAt).map((each) => [each.position, each.point]))
  return opponents.map((opponent, index) => {
    const man = men[index]
    const place = man === undefined ? undefined : places.get(man)
    if (place === undefined) return sendTo(opponent, headingFor(opponent), cue)
    if (man === step.receiver) return sendTo(opponent, step.to, cue)
    return sendTo(opponent, point(place.x + MARKING_METRES, place.y), cue)
  })
}

/**
 * Nearest pair first, each opponent and each player once; the goalkeeper is nobody's man while others are left.
 * Equal distances go by the order of the starts and of the positions.
 */
export function assignMen(starts: readonly StartPlace[], timeline: Timeline): readonly (Position | undefined)[] {
  const goalkeeperLast = (position: Position) => (position === 'GK' ? 1 : 0)
  const pairs = starts
    .flatMap((start, index) =>
      timeline.tracks.map((track) => ({
        index,
        position: track.position,
        last: goalkeeperLast(track.position),
        off: millimetresOf(distance(start.at, track.start)),
      })),
    )
    .sort((a, b) => a.last - b.last || a.off - b.off || a.index - b.index)
  const men: (Position | undefined)[] = starts.map(() => undefined)
  const taken = new Set<Position>()
  for (const { index, position } of pairs) {
    if (men[index] !== undefined || taken.has(position)) continue
    men[index] = position
    taken.add(position)
  }
  return men
}

import { distance, distanceToSegment, type Point } from '../../geometry'
import type { Obstacle } from '../../pattern'
import { buildOutLine } from '../../pitch'
import { type Metres, metres, metresOf, millimetresOf, millisecondsOf, type Seconds, seconds } from '../../quantities'
import type { CheckContext } from '../context'
import { laneMarginBetween, measureFromLane } from '../lane'
import type { CheckNote } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import type { TimedStep } from '../timed-step'
import { nameObstacle, sayMetres, saySeconds } from '../wording'

/**
 * A drawn opponent gets to the ball first somewhere along its way, or it runs into a pole or a cone. Opponents are taken to
 * stand where they are drawn until the ball is played.
 */
export function laneClosedNotes(context: CheckContext): readonly CheckNote[] {
  const waitingLine = waitingUntilTouched(context)
  const drawn = context.document.obstacles.map((obstacle) => ({ obstacle, at: context.place(obstacle.spot) }))
  return notesOfSteps(context, (step, index) =>
    drawn.flatMap(({ obstacle, at }) => {
      // Behind their line until a team-mate has touched the ball, they cannot take one that never crosses it.
      const waits = index === 0 && waitingLine !== null && at.x >= waitingLine
      if (obstacle.kind === 'opponent' && waits && Math.max(step.from.x, step.to.x) < waitingLine) return []
      const note =
        obstacle.kind === 'opponent' ? opponentNote(context, step, at) : standingNote(context, step, obstacle, at)
      return note === null ? [] : [note]
    }),
  )
}

/** The build-out line while it binds the opponents during the first ball: a club setting, after a release from the hands. */
function waitingUntilTouched({ document, format, space }: CheckContext): Metres | null {
  const binds = document.restart === 'goalkeeper-hands' && format.buildOutCrossing?.value === 'touched'
  return binds ? buildOutLine(space) : null
}

/** How much later than the ball an opponent at rest is anywhere along its way; null for a carried ball. */
export function opponentMargin(context: Pick<CheckContext, 'profile'>, step: TimedStep, at: Point): Seconds | null {
  const { topSpeed, reaction, reach } = context.profile
  switch (step.flight.kind) {
    case 'carried':
      return null
    case 'rolls':
      return laneMarginBetween(step.from, step.to, step.flight.ball, {
        at,
        speed: topSpeed.value,
        reaction: reaction.value,
        reach: reach.value,
      }).margin
    case 'flies': {
      // Over their heads on the way: only where the ball comes down can they be first.
      const way = Math.max(0, distance(at, step.to) - reach.value)
      return seconds(reaction.value + way / topSpeed.value - step.flight.duration)
    }
  }
}

/** Seconds by which the quick answer stays on the safe side of rounding to milliseconds. */
const SLACK = 0.001

/**
 * Too far from the whole way for a look at each of its places: they could not even be at the nearest by the time the ball is at
 * the last. Most opponents are, of most balls.
 */
function isFarOff({ profile, limits }: CheckContext, step: TimedStep, at: Point): boolean {
  const nearest = Math.max(0, distanceToSegment(at, step) - profile.reach.value)
  const earliest = profile.reaction.value + nearest / profile.topSpeed.value
  return earliest - (step.ballArrivesAt - step.startsAt) > limits.laneMarginSeconds.value + SLACK
}

function opponentNote(context: CheckContext, step: TimedStep, at: Point): CheckNote | null {
  if (isFarOff(context, step, at)) return null
  const margin = opponentMargin(context, step, at)
  const limit = context.limits.laneMarginSeconds
  if (margin === null || millisecondsOf(margin) >= millisecondsOf(limit.value)) return null
  const closed = millisecondsOf(margin) <= 0
  const way = `from ${step.actor} to ${step.receiver ?? 'the target'}`
  return {
    code: 'lane-closed',
    severity: closed ? 'look-at' : 'note',
    stepId: step.stepId,
    position: step.actor,
    value: seconds(millisecondsOf(margin) / 1000),
    limit: limit.value,
    unit: 's',
    sourceKind: limit.kind,
    source: limit.source,
    sentence: closed
      ? `An opponent ${whereFrom(step, at)} reaches the ball ${way} first, by ${saySeconds(seconds(-margin))}.`
      : `The ball ${way} passes an opponent ${whereFrom(step, at)} with only ${saySeconds(margin)} to spare.`,
    remedy: null,
  }
}

/** Poles and cones do not move: they shut what runs into them. A ball in the air goes over them. */
function standingNote(context: CheckContext, step: TimedStep, obstacle: Obstacle, at: Point): CheckNote | null {
  if (step.flight.kind !== 'rolls') return null
  const limit = obstacle.kind === 'pole' ? context.limits.poleMetres : context.limits.coneMetres
  const off = millimetresOf(distanceToSegment(at, { from: step.from, to: step.to }))
  if (off >= millimetresOf(limit.value)) return null
  return {
    code: 'lane-closed',
    severity: 'look-at',
    stepId: step.stepId,
    position: step.actor,
    value: metresOf(off),
    limit: limit.value,
    unit: 'm',
    sourceKind: limit.kind,
    source: limit.source,
    sentence: `The ball from ${step.actor} to ${step.receiver ?? 'the target'} runs into the ${nameObstacle(context.document, obstacle)}.`,
    remedy: null,
  }
}

function whereFrom(step: TimedStep, at: Point): string {
  const { along, off } = measureFromLane(step.from, step.to, at)
  return `${sayMetres(metres(Math.max(0, along)))} along and ${sayMetres(off)} off its way`
}

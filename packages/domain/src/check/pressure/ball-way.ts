import { between, distance, type Point } from '../../geometry'
import { metres, type Seconds, seconds } from '../../quantities'
import { rollingDuration } from '../ball'
import type { TimedStep } from '../timed-step'
import { playerAt, type Timeline } from '../timeline'

/** A place on the ball's way and when the ball is there, on the ground, to be had. */
export type BallMoment = { readonly place: Point; readonly at: Seconds }

/** The way is looked at every half metre: less than a child's reach, so that nobody slips through between two looks. */
const SPACING_METRES = 0.5

/** Where an opponent can get at the ball of one step: along the ground, or only where a ball in the air comes down. */
export function ballMoments(timeline: Timeline, step: TimedStep): readonly BallMoment[] {
  const end = { place: step.to, at: step.ballArrivesAt }
  const length = distance(step.from, step.to)
  const parts = Math.max(1, Math.ceil(length / SPACING_METRES))
  const shares = Array.from({ length: parts }, (_, index) => (index + 1) / parts)
  switch (step.flight.kind) {
    case 'flies':
      return [end]
    case 'rolls': {
      const { ball } = step.flight
      return shares.map((share) => ({
        place: between(step.from, step.to, share),
        at: seconds(
          step.startsAt + (rollingDuration(ball, metres(length * share)) ?? ball.releaseSpeed / ball.deceleration),
        ),
      }))
    }
    case 'carried': {
      const duration = step.ballArrivesAt - step.startsAt
      return shares.map((share) => {
        const at = seconds(step.startsAt + duration * share)
        return { place: playerAt(timeline, step.actor, at), at }
      })
    }
  }
}

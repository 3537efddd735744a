import { between, distance, type Point } from '../../geometry'
import type { BallAction, Obstacle } from '../../pattern'
import { type Metres, type Millimetres, metres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import { measureFromLane } from '../lane'
import type { CheckNote, Remedy } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import { spotFor } from '../places'
import type { TimedStep } from '../timed-step'
import { withRemedies } from '../try-remedy'
import { nameObstacle, sayMetres } from '../wording'

/**
 * A player carries at an opponent to draw them and passes before the tackle: near enough that they must come, not so near
 * that they reach the ball. A dribble past ends behind whom it passes.
 */
export const carryReleaseNotes = withRemedies(findRelease, stopBetween)

function findRelease(context: CheckContext): readonly CheckNote[] {
  return notesOfSteps(context, (step, index): CheckNote[] => {
    const met = obstacleMet(context, context.document.steps[index]?.action)
    if (met === null) return []
    const note = step.kind === 'carry' ? carryNote(context, step, met) : dribbleNote(context, step, met)
    return note === null ? [] : [note]
  })
}

type Met = { readonly obstacle: Obstacle; readonly at: Point }

/** Whom the action is played at: an opponent or a pole that stands for one. */
function obstacleMet({ document, place }: CheckContext, action: BallAction | undefined): Met | null {
  const id = action?.kind === 'carry' ? action.at : action?.kind === 'dribble-past' ? action.past : null
  const obstacle = id === null ? undefined : document.obstacles.find((each) => each.obstacleId === id)
  return obstacle === undefined ? null : { obstacle, at: place(obstacle.spot) }
}

function carryNote(context: CheckContext, step: TimedStep, { obstacle, at }: Met): CheckNote | null {
  const { releaseNearMetres: near, releaseFarMetres: far } = context.limits
  const away = millimetresOf(distance(step.to, at))
  const name = nameObstacle(context.document, obstacle)
  if (away < millimetresOf(near.value)) {
    const sentence = `${step.actor} stops only ${sayMetres(metresOf(away))} from the ${name}: pass before they reach the ball.`
    return releaseNote(step, away, near, 'look-at', sentence)
  }
  if (away <= millimetresOf(far.value)) return null
  const sentence = `${step.actor} stops ${sayMetres(metresOf(away))} from the ${name}: from there nobody has to come. Carry on to ${sayMetres(far.value)}.`
  return releaseNote(step, away, far, 'note', sentence)
}

function dribbleNote(context: CheckContext, step: TimedStep, { obstacle, at }: Met): CheckNote | null {
  const length = distance(step.from, step.to)
  const before = millimetresOf(metres(measureFromLane(step.from, step.to, at).along - length))
  if (before <= 0) return null
  const name = nameObstacle(context.document, obstacle)
  const sentence = `${step.actor} is to go past the ${name} and stops ${sayMetres(metresOf(before))} before.`
  return releaseNote(step, before, { value: metres(0), kind: 'computed', source: 'the way drawn' }, 'look-at', sentence)
}

type ReleaseLimit = { readonly value: Metres; readonly kind: CheckNote['sourceKind']; readonly source: string }

function releaseNote(
  step: TimedStep,
  value: Millimetres,
  limit: ReleaseLimit,
  severity: 'look-at' | 'note',
  sentence: string,
): CheckNote {
  return {
    code: 'carry-release',
    severity,
    stepId: step.stepId,
    position: step.actor,
    value: metresOf(value),
    limit: limit.value,
    unit: 'm',
    sourceKind: limit.kind,
    source: limit.source,
    sentence,
    remedy: null,
  }
}

/** The carry ends on the same way where it is neither too near nor too far. */
function stopBetween(context: CheckContext, note: CheckNote): readonly Remedy[] {
  const index = context.document.steps.findIndex((each) => each.stepId === note.stepId)
  const step = context.timeline.steps[index]
  const met = obstacleMet(context, context.document.steps[index]?.action)
  if (step === undefined || met === null || step.kind !== 'carry') return []
  const { releaseNearMetres: near, releaseFarMetres: far } = context.limits
  const length = distance(step.from, met.at)
  const wanted = (near.value + far.value) / 2
  if (length <= wanted) return []
  const spot = spotFor(context.document, context.space, between(step.from, met.at, 1 - wanted / length))
  const { stepId, actor: position } = step
  const sentence = `Let ${position} carry until ${sayMetres(metres(wanted))} before the ${nameObstacle(context.document, met.obstacle)}.`
  return [{ kind: 'meet-at', stepId, position, spot, sentence }]
}

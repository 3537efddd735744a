import { between, distance } from '../../geometry'
import { placeOf } from '../../pattern'
import { type Metres, metresOf, millimetresOf, type Sourced } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote, Remedy } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import { spotFor } from '../places'
import type { TeamReach } from '../team-reach'
import { withRemedies } from '../try-remedy'
import { sayMetres } from '../wording'

/**
 * A pass along the ground beyond the distance at which seven of ten of this team hit a gate. In two touches the ball is put
 * before the strong foot; played at once it comes as it comes, so the other foot's reach counts.
 */
export const beyondTeamReachNotes = withRemedies(findBeyond, comeNearer)

function findBeyond(context: CheckContext): readonly CheckNote[] {
  const { document, teamReach } = context
  if (teamReach === null) return []
  return notesOfSteps(context, (step, index): CheckNote[] => {
    if ((step.kind !== 'pass' && step.kind !== 'set-back') || step.flight.kind !== 'rolls') return []
    const action = document.steps[index]?.action
    const atOnce = step.kind === 'set-back' || (action?.kind === 'pass' && action.touches === 1 && index > 0)
    const limit = reachOf(teamReach, atOnce)
    const length = millimetresOf(distance(step.from, step.to))
    if (length <= millimetresOf(limit.value)) return []
    return [
      {
        code: 'beyond-team-reach',
        severity: 'look-at',
        stepId: step.stepId,
        position: step.actor,
        value: metresOf(length),
        limit: limit.value,
        unit: 'm',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `${step.actor} plays ${sayMetres(metresOf(length))}${atOnce ? ' at once' : ''}; this team finds a gate up to ${sayMetres(limit.value)}${atOnce ? ' with either foot' : ''}.`,
        remedy: null,
      },
    ]
  })
}

function reachOf(reach: TeamReach, atOnce: boolean): Sourced<Metres> {
  return atOnce ? reach.otherFoot : reach.strongFoot
}

/** A hand's breadth within the reach, so that rounding to spots does not put it beyond again. */
const WITHIN_METRES = 0.1

/** The receiver comes towards the ball until it is within reach, as the step before is played or as this one is. */
function comeNearer(context: CheckContext, note: CheckNote): readonly Remedy[] {
  const step = context.timeline.steps.find((each) => each.stepId === note.stepId)
  const action = context.document.steps.find((each) => each.stepId === note.stepId)?.action
  if (step === undefined || action === undefined || step.receiver === null) return []
  const position = step.receiver
  const share = Math.max(0, note.limit - WITHIN_METRES) / note.value
  const spot = spotFor(context.document, context.space, between(step.from, step.to, share))
  const sentence = `Let ${position} come nearer to ${step.actor}.`
  if (placeOf(action) !== null) return [{ kind: 'meet-at', stepId: step.stepId, position, spot, sentence }]
  return (['with-the-ball', 'before-the-ball'] as const).map((start) => ({
    kind: 'come-to',
    stepId: step.stepId,
    position,
    spot,
    start,
    sentence,
  }))
}

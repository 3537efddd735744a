import { between } from '../../geometry'
import { placeOf, RUN_STARTS, type Run } from '../../pattern'
import { type Milliseconds, millimetresOf, millisecondsOf, seconds, unreachable } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote, Remedy } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import { spotFor } from '../places'
import { mendStep } from '../remedy'
import type { TimedStep } from '../timed-step'
import { playerAt } from '../timeline'
import { saySeconds } from '../wording'

/**
 * The receiver reaches the ball's meeting place after the ball. Silent within the limit, and where the ball does not get
 * there itself: how late somebody is for it then helps nobody.
 */
export function receiverLateNotes(context: CheckContext): readonly CheckNote[] {
  const limit = context.limits.lateSeconds
  return notesOfSteps(context, (step, index): CheckNote[] => {
    const late = lateMs(step)
    if (late <= millisecondsOf(limit.value) || step.receiver === null || stopsShort(context, step)) return []
    const run = context.document.steps[index]?.runs.find((each) => each.position === step.receiver) ?? null
    const lateStep: LateStep = { step, index, position: step.receiver, run }
    return [
      {
        code: 'receiver-late',
        severity: 'look-at',
        stepId: step.stepId,
        position: step.receiver,
        value: late / 1000,
        limit: limit.value,
        unit: 's',
        sourceKind: 'computed',
        source: `timeline of this pattern with ${context.profile.profileId} players; the limit: ${limit.source}`,
        sentence: `${step.receiver} arrives ${saySeconds(seconds(late / 1000))} late.${run === null ? '' : runSentence(run, step)}`,
        remedy: latestStart(context, lateStep) ?? nearestMeeting(context, lateStep),
      },
    ]
  })
}

type LateStep = {
  readonly step: TimedStep
  readonly index: number
  readonly position: string
  /** The receiver's run in this step, if they make one. */
  readonly run: Run | null
}

function stopsShort({ limits }: CheckContext, step: TimedStep): boolean {
  return millimetresOf(step.shortBy) > millimetresOf(limits.shortMetres.value)
}

function lateMs(step: TimedStep): Milliseconds {
  return millisecondsOf(seconds(Math.max(0, (step.receiverArrivesAt ?? 0) - step.ballArrivesAt)))
}

/** Plays the step with the remedy and looks at it again. */
function mends(context: CheckContext, index: number, remedy: Remedy): boolean {
  const step = context.document.steps[index]
  if (step === undefined) return false
  return lateMs(context.retime(index, mendStep(step, remedy))) <= millisecondsOf(context.limits.lateSeconds.value)
}

/** The latest start of the run that is still early enough. */
function latestStart(context: CheckContext, { step, index, position, run }: LateStep): Remedy | null {
  if (run === null) return null
  const earlier = RUN_STARTS.slice(0, RUN_STARTS.indexOf(run.start)).reverse()
  const remedies = earlier.map((start): Remedy => {
    const sentence = startSentence(position, start, step)
    return { kind: 'start-run', stepId: step.stepId, position, start, sentence }
  })
  return remedies.find((remedy) => mends(context, index, remedy)) ?? null
}

/** Halvings of the way between where the receiver is and where the ball is met: to a hundredth of it. */
const HALVINGS = 7

/**
 * The meeting place nearest to the one drawn, on the receiver's way to it, that they reach in time. Only where the step
 * itself names the place: a ball into space, or the end of a run of the same step.
 */
function nearestMeeting(context: CheckContext, { step, index, position, run }: LateStep): Remedy | null {
  const action = context.document.steps[index]?.action
  if (action === undefined || (run === null && placeOf(action) === null)) return null
  const here = playerAt(context.timeline, position, step.startsAt)
  const meetAt = (share: number): Remedy => ({
    kind: 'meet-at',
    stepId: step.stepId,
    position,
    spot: spotFor(context.document, context.space, between(here, step.to, share)),
    sentence: `Meet ${position} nearer to where they come from.`,
  })
  if (!mends(context, index, meetAt(0))) return null
  let good = 0
  let late = 1
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (good + late) / 2
    if (mends(context, index, meetAt(middle))) good = middle
    else late = middle
  }
  return meetAt(good)
}

function runSentence(run: Run, step: TimedStep): string {
  switch (run.start) {
    case 'before-the-ball':
      return ' The run starts a step before.'
    case 'with-the-ball':
      return ` The run starts as ${step.actor} plays.`
    case 'after-the-ball':
      return ' The run starts when the ball is there.'
    default:
      return unreachable(run.start)
  }
}

function startSentence(position: string, start: Run['start'], step: TimedStep): string {
  return start === 'before-the-ball'
    ? `Start the run of ${position} a step earlier.`
    : `Start the run of ${position} as ${step.actor} plays.`
}

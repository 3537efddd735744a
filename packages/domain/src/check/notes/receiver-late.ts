import { between, type Point } from '../../geometry'
import type { PatternDocument, Run, Step } from '../../pattern'
import { placeOf, RUN_STARTS } from '../../pattern'
import { nearestSpot, type Spot } from '../../pitch'
import { type Milliseconds, millisecondsOf, seconds } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote, Remedy } from '../note'
import type { TimedStep } from '../timed-step'
import { playerAt, type Timeline } from '../timeline'
import { saySeconds } from '../wording'

/** The receiver reaches the ball's meeting place after the ball. Silent within the limit. */
export function receiverLateNotes(context: CheckContext): readonly CheckNote[] {
  const limit = context.limits.lateSeconds
  return context.timeline.steps.flatMap((step, index): CheckNote[] => {
    const late = lateMs(step)
    if (late <= millisecondsOf(limit.value) || step.receiver === null) return []
    const run = context.document.steps[index]?.runs.find((each) => each.position === step.receiver)
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
        source: `the timeline of this pattern with ${context.profile.profileId} players; limit: ${limit.source}`,
        sentence: `${step.receiver} arrives ${saySeconds(seconds(late / 1000))} late.${run === undefined ? '' : runSentence(run, step)}`,
        remedy: earlierStart(context, index) ?? nearerSpot(context, index),
      },
    ]
  })
}

function lateMs(step: TimedStep): Milliseconds {
  return millisecondsOf(seconds(Math.max(0, (step.receiverArrivesAt ?? 0) - step.ballArrivesAt)))
}

function isMended(timeline: Timeline, index: number, context: CheckContext): boolean {
  const step = timeline.steps[index]
  return step !== undefined && lateMs(step) <= millisecondsOf(context.limits.lateSeconds.value)
}

/** The latest start that is still early enough. */
function earlierStart(context: CheckContext, index: number): Remedy | null {
  const step = context.document.steps[index]
  const timed = context.timeline.steps[index]
  if (step === undefined || timed?.receiver === null || timed?.receiver === undefined) return null
  const position = timed.receiver
  const run = step.runs.find((each) => each.position === position)
  if (run === undefined) return null
  const earlier = RUN_STARTS.slice(0, RUN_STARTS.indexOf(run.start)).reverse()
  for (const start of earlier) {
    const runs = step.runs.map((each) => (each === run ? { ...each, start } : each))
    if (isMended(context.retime(replaceStep(context.document, index, { ...step, runs })), index, context)) {
      return {
        kind: 'start-run',
        stepId: step.stepId,
        position,
        start,
        sentence: startSentence(position, start, timed),
      }
    }
  }
  return null
}

/** Halvings of the way between where the receiver is and where the ball is met: to a hundredth of it. */
const HALVINGS = 7

/** The meeting place nearest to the one drawn, on the receiver's own way to it, that they reach in time. */
function nearerSpot(context: CheckContext, index: number): Remedy | null {
  const step = context.document.steps[index]
  const timed = context.timeline.steps[index]
  if (step === undefined || timed?.receiver === null || timed?.receiver === undefined) return null
  const position = timed.receiver
  const here = playerAt(context.timeline, position, timed.startsAt)
  const tried = (share: number) => withMeetingAt(context, step, position, between(here, timed.to, share))
  const mends = (share: number) => {
    const changed = tried(share)
    return (
      changed !== null && isMended(context.retime(replaceStep(context.document, index, changed.step)), index, context)
    )
  }
  if (!mends(0)) return null
  let good = 0
  let bad = 1
  for (let halving = 0; halving < HALVINGS; halving += 1) {
    const middle = (good + bad) / 2
    if (mends(middle)) good = middle
    else bad = middle
  }
  const changed = tried(good)
  if (changed === null) return null
  const sentence = `Meet ${position} nearer to where the run begins.`
  return { kind: 'meet-at', stepId: step.stepId, position, spot: changed.spot, sentence }
}

/** The step with its ball met somewhere else; null for a ball to the feet of someone who makes no run. */
function withMeetingAt(
  context: CheckContext,
  step: Step,
  position: string,
  place: Point,
): { readonly step: Step; readonly spot: Spot } | null {
  const spot = nearestSpot(context.space, place)
  const runs = step.runs.map((run) => (run.position === position ? { ...run, to: spot } : run))
  const { action } = step
  if (placeOf(action) === null) {
    return step.runs.some((run) => run.position === position) ? { step: { ...step, runs }, spot } : null
  }
  if (!('into' in action)) return null
  return { step: { ...step, runs, action: { ...action, into: { kind: 'space', spot } } }, spot }
}

function replaceStep(document: PatternDocument, index: number, step: Step): PatternDocument {
  return { ...document, steps: document.steps.map((each, at) => (at === index ? step : each)) }
}

function runSentence(run: Run, step: TimedStep): string {
  switch (run.start) {
    case 'before-the-ball':
      return ' The run starts a step before.'
    case 'with-the-ball':
      return ` The run starts as ${step.actor} plays.`
    case 'after-the-ball':
      return ' The run starts when the ball arrives.'
  }
}

function startSentence(position: string, start: Run['start'], step: TimedStep): string {
  return start === 'before-the-ball'
    ? `Start the run of ${position} a step earlier.`
    : `Start the run of ${position} as ${step.actor} plays.`
}

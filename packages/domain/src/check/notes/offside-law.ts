import { type Landmark, landmarkPoint } from '../../pitch'
import { type Metres, metres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { notesOfSteps } from '../notes-of-steps'
import type { TimedStep } from '../timed-step'
import { playerAt } from '../timeline'
import { sayMetres } from '../wording'

const LAW = 'IFAB Laws of the Game, Law 11 Offside'

/**
 * A receiver beyond the ball, the line offside is judged from, and the second-last opponent as the ball is played. None
 * directly from a goal kick or throw-in, and level is not offside. Opponents' goalkeepers are rarely drawn, so theirs is
 * taken as the last and the last drawn opponent as the second-last; only when their whole side is drawn is that certain
 * enough to stop a publication, with some of them drawn it is worth a look, with none nothing is said.
 */
export function offsideNotes(context: CheckContext): readonly CheckNote[] {
  const line = offsideLine(context)
  const last = secondLastOpponent(context)
  if (line === null || last === null) return []
  return notesOfSteps(context, (step, index) => {
    const free = index === 0 && (context.document.restart === 'goal-kick' || context.document.restart === 'throw-in')
    return free ? [] : offsideAt(context, step, Math.max(line, last.x), last.certain)
  })
}

function offsideAt({ timeline, format }: CheckContext, step: TimedStep, from: number, certain: boolean): CheckNote[] {
  const { receiver } = step
  if (receiver === null || step.flight.kind === 'carried') return []
  const beyond = playerAt(timeline, receiver, step.startsAt).x - Math.max(from, step.from.x)
  const over = millimetresOf(metres(beyond))
  if (over <= 0) return []
  const judged = format.offsideFrom
  return [
    {
      code: 'offside-law',
      severity: certain ? 'to-fix' : 'look-at',
      stepId: step.stepId,
      position: receiver,
      value: metresOf(over),
      limit: 0,
      unit: 'm',
      sourceKind: judged.kind,
      source: judged.value === 'halfway' ? LAW : `${LAW}; ${judged.source}`,
      sentence: `${receiver} is ${sayMetres(metresOf(over))} offside as ${step.actor} plays${certain ? '' : ', if the opponents drawn are their last'}.`,
      remedy: null,
    },
  ]
}

/** How far up the pitch offside begins; null where the space has no far half. */
function offsideLine({ space, format }: CheckContext): Metres | null {
  if (space.covers !== 'whole') return null
  const landmark: Landmark = format.offsideFrom.value === 'halfway' ? 'centre-mark' : 'far-build-out-line-centre'
  return landmarkPoint(space, landmark)?.x ?? null
}

function secondLastOpponent({
  document,
  format,
  place,
}: CheckContext): { readonly x: Metres; readonly certain: boolean } | null {
  const depths = document.obstacles
    .filter((each) => each.kind === 'opponent')
    .map((each) => place(each.spot).x)
    .sort((a, b) => b - a)
  const players = format.playersPerSide.value
  // With the whole side drawn their goalkeeper is among them; otherwise the goalkeeper stands undrawn behind them all.
  const deepest = depths.length >= players ? depths[1] : depths[0]
  return deepest === undefined ? null : { x: deepest, certain: depths.length >= players - 1 }
}

import { actorOf } from '../../pattern'
import { metresOf } from '../../quantities'
import { isInArea, outsideByMm, ownArea } from '../areas'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { nameObstacle, sayMetres } from '../wording'

const LAW = 'IFAB Laws of the Game, Law 16 The Goal Kick'

/** Law 16: any player, from anywhere in the goal area, not twice; opponents outside the penalty area until it is in play. */
export function goalKickNotes(context: CheckContext): readonly CheckNote[] {
  if (context.document.restart !== 'goal-kick') return []
  return [...takerNotes(context), ...opponentNotes(context)]
}

function takerNotes({ document, format, timeline }: CheckContext): readonly CheckNote[] {
  const first = timeline.steps[0]
  const step = document.steps[0]
  if (first === undefined || step === undefined) return []
  const notes: CheckNote[] = []
  const law = {
    severity: 'to-fix',
    stepId: first.stepId,
    position: first.actor,
    sourceKind: 'published',
    source: LAW,
  } as const
  if (format.goalArea !== null) {
    const outside = outsideByMm(ownArea(format.goalArea.value), first.from)
    if (outside > 0) {
      notes.push({
        ...law,
        code: 'goal-kick-law',
        value: metresOf(outside),
        limit: 0,
        unit: 'm',
        sentence: `A goal kick is taken inside the goal area; ${first.actor} stands ${sayMetres(metresOf(outside))} outside it.`,
        remedy: null,
      })
    }
  }
  if (first.flight.kind === 'carried') {
    notes.push({
      ...law,
      code: 'goal-kick-law',
      value: 2,
      limit: 1,
      unit: 'touches',
      sentence: `At a goal kick ${actorOf(step.action)} kicks once: the next touch belongs to another player.`,
      remedy: null,
    })
  }
  return notes
}

function opponentNotes({ document, format, place }: CheckContext): readonly CheckNote[] {
  if (format.penaltyArea === null) return []
  const area = ownArea(format.penaltyArea.value)
  return document.obstacles
    .filter((each) => each.kind === 'opponent' && isInArea(area, place(each.spot)))
    .map((each) => ({
      code: 'goal-kick-law',
      severity: 'to-fix',
      stepId: document.steps[0]?.stepId ?? null,
      position: null,
      value: 1,
      limit: 0,
      unit: 'players',
      sourceKind: 'published',
      source: LAW,
      sentence: `The ${nameObstacle(document, each)} must be outside the penalty area until the ball is in play.`,
      remedy: null,
    }))
}

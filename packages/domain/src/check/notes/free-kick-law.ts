import { distance } from '../../geometry'
import { metresOf, millimetresOf } from '../../quantities'
import { isInArea, ownArea } from '../areas'
import type { CheckContext } from '../context'
import { drawnOpponents } from '../drawn-opponents'
import type { CheckNote } from '../note'
import { nameObstacle, sayMetres } from '../wording'

const LAW = 'IFAB Laws of the Game, Law 13 Free Kicks'

/** Law 13: one kick, opponents at the format's distance, and outside the area while the kick is taken inside it. */
export function freeKickNotes(context: CheckContext): readonly CheckNote[] {
  if (context.document.restart !== 'free-kick') return []
  return [...secondTouchNotes(context), ...distanceNotes(context)]
}

function secondTouchNotes({ timeline }: CheckContext): readonly CheckNote[] {
  const first = timeline.steps[0]
  if (first === undefined || first.flight.kind !== 'carried') return []
  return [
    {
      code: 'free-kick-law',
      severity: 'to-fix',
      stepId: first.stepId,
      position: first.actor,
      value: 2,
      limit: 1,
      unit: 'touches',
      sourceKind: 'published',
      source: LAW,
      sentence: `At a free kick ${first.actor} kicks once: the next touch belongs to another player.`,
      remedy: null,
    },
  ]
}

function distanceNotes(context: CheckContext): readonly CheckNote[] {
  const { document, format, timeline } = context
  const first = timeline.steps[0]
  if (first === undefined) return []
  const least = format.restartDistanceMm
  const area = format.penaltyArea === null ? null : ownArea(format.penaltyArea.value)
  return drawnOpponents(context).flatMap(({ obstacle, at }): CheckNote[] => {
    const away = millimetresOf(distance(first.from, at))
    const shut = area !== null && isInArea(area, first.from) && isInArea(area, at)
    if (away >= least.value && !shut) return []
    const near = away < least.value
    return [
      {
        code: 'free-kick-law',
        // A distance nobody has checked against the law must not stop a publication.
        severity: near && least.kind !== 'published' ? 'look-at' : 'to-fix',
        stepId: first.stepId,
        position: null,
        value: near ? metresOf(away) : 1,
        limit: near ? metresOf(least.value) : 0,
        unit: near ? 'm' : 'players',
        sourceKind: near ? least.kind : 'published',
        source: near ? least.source : LAW,
        sentence: near
          ? `The ${nameObstacle(document, obstacle)} stands ${sayMetres(metresOf(away))} from the free kick, nearer than ${sayMetres(metresOf(least.value))}.`
          : `The ${nameObstacle(document, obstacle)} must be outside the penalty area until the free kick is in play.`,
        remedy: null,
      },
    ]
  })
}

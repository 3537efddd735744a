import { distance } from '../../geometry'
import { type Metres, metres, metresOf, millimetresOf } from '../../quantities'
import type { CheckContext } from '../context'
import { drawnOpponents } from '../drawn-opponents'
import type { CheckNote } from '../note'
import { nameObstacle, sayMetres } from '../wording'

const LAW = 'IFAB Laws of the Game, Law 15 The Throw-in'

/** Law 15: the ball is thrown, from the touchline, with the opponents a little way off. */
export function throwInNotes(context: CheckContext): readonly CheckNote[] {
  const first = context.timeline.steps[0]
  if (context.document.restart !== 'throw-in' || first === undefined) return []
  const law = {
    code: 'throw-in-law',
    severity: 'to-fix',
    stepId: first.stepId,
    position: first.actor,
    sourceKind: 'published',
    source: LAW,
    remedy: null,
  } as const
  const notes: CheckNote[] = []
  if (first.kind !== 'throw') {
    const sentence = `A throw-in is thrown: ${first.actor} may not play it with the feet.`
    notes.push({ ...law, value: 1, limit: 0, unit: 'touches', sentence })
  }
  const inside = millimetresOf(metres(metresOf(context.space.widthMm) / 2 - Math.abs(first.from.y)))
  if (inside > millimetresOf(context.limits.throwInMetres.value)) {
    const sentence = `A throw-in is taken at the touchline; ${first.actor} stands ${sayMetres(metresOf(inside))} inside it.`
    notes.push({ ...law, value: metresOf(inside), limit: context.limits.throwInMetres.value, unit: 'm', sentence })
  }
  return [...notes, ...nearNotes(context, first.stepId, (at) => distance(first.from, at))]
}

type DistanceFrom = (at: Parameters<typeof distance>[1]) => Metres

function nearNotes(context: CheckContext, stepId: string, distanceTo: DistanceFrom): readonly CheckNote[] {
  const limit = context.limits.throwInDistanceMetres
  return drawnOpponents(context).flatMap(({ obstacle, at }): CheckNote[] => {
    const away = millimetresOf(distanceTo(at))
    if (away >= millimetresOf(limit.value)) return []
    return [
      {
        code: 'throw-in-law',
        severity: 'look-at',
        stepId,
        position: null,
        value: metresOf(away),
        limit: limit.value,
        unit: 'm',
        sourceKind: limit.kind,
        source: limit.source,
        sentence: `The ${nameObstacle(context.document, obstacle)} stands ${sayMetres(metresOf(away))} from the throw-in, nearer than ${sayMetres(limit.value)}.`,
        remedy: null,
      },
    ]
  })
}

import { distance } from '../../geometry'
import { metresOf, millimetresOf, type Seconds, seconds } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { playersAt } from '../timeline'
import { sayMetres } from '../wording'

/** Two of the own players in one place, at the start or when a ball is played or arrives; each pair is named once. */
export function twoInOnePlaceNotes(context: CheckContext): readonly CheckNote[] {
  const limit = context.limits.placeMetres
  const moments: readonly { readonly stepId: string | null; readonly at: Seconds }[] = [
    { stepId: null, at: seconds(0) },
    ...context.timeline.steps.flatMap((step) => [
      { stepId: step.stepId, at: step.startsAt },
      { stepId: step.stepId, at: step.receivedAt },
    ]),
  ]
  const named = new Set<string>()
  return moments.flatMap(({ stepId, at }) => {
    const players = playersAt(context.timeline, at)
    return players.flatMap((one, index) =>
      players.slice(index + 1).flatMap((other): CheckNote[] => {
        const apart = millimetresOf(distance(one.point, other.point))
        if (apart >= millimetresOf(limit.value)) return []
        const pair = `${one.position} ${other.position}`
        if (named.has(pair)) return []
        named.add(pair)
        return [
          {
            code: 'two-in-one-place',
            severity: 'look-at',
            stepId,
            position: one.position,
            value: metresOf(apart),
            limit: limit.value,
            unit: 'm',
            sourceKind: limit.kind,
            source: limit.source,
            sentence:
              apart === 0
                ? `${one.position} and ${other.position} stand in the same place.`
                : `${one.position} and ${other.position} are only ${sayMetres(metresOf(apart))} apart.`,
            remedy: null,
          },
        ]
      }),
    )
  })
}

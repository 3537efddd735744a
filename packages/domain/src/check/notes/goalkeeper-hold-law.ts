import { GOALKEEPER } from '../../pattern'
import { millisecondsOf, type Seconds, seconds } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import { saySeconds } from '../wording'

/**
 * Law 12: a goalkeeper may not hold the ball in the hands for longer than the limit. Counted from the restart in the hands to
 * the throw or roll; where the goalkeeper kicks it in the end it may long have lain on the ground, so nothing is said.
 */
export function goalkeeperHoldNotes({ document, timeline, limits }: CheckContext): readonly CheckNote[] {
  if (document.restart !== 'goalkeeper-hands') return []
  const release = timeline.steps.find((step) => step.actor !== GOALKEEPER || step.flight.kind !== 'carried')
  if (release === undefined || release.actor !== GOALKEEPER) return []
  if (release.kind !== 'throw' && release.kind !== 'roll') return []
  const held: Seconds = release.startsAt
  const limit = limits.holdSeconds
  if (millisecondsOf(held) <= millisecondsOf(limit.value)) return []
  return [
    {
      code: 'goalkeeper-hold-law',
      severity: 'to-fix',
      stepId: release.stepId,
      position: GOALKEEPER,
      value: millisecondsOf(held) / 1000,
      limit: limit.value,
      unit: 's',
      sourceKind: limit.kind,
      source: limit.source,
      sentence: `${GOALKEEPER} holds the ball for ${saySeconds(seconds(held))}; after ${saySeconds(limit.value)} it is a corner kick for the others.`,
      remedy: null,
    },
  ]
}

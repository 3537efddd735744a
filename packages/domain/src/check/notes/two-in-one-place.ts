import { distance } from '../../geometry'
import { type Metres, type Millimetres, metresOf, millimetresOf, type Seconds, seconds } from '../../quantities'
import type { CheckContext } from '../context'
import type { CheckNote } from '../note'
import type { PlacedPlayer } from '../timeline'
import { sayMetres } from '../wording'

/** Two of the own players in one place, at the start or when a ball is played or arrives; each pair is named once. */
export function twoInOnePlaceNotes(context: CheckContext): readonly CheckNote[] {
  const notes: CheckNote[] = []
  const named = new Set<string>()
  for (const { stepId, at } of momentsOf(context)) {
    for (const [one, other] of closePairs(context.playersAt(at), context.limits.placeMetres.value)) {
      const pair = `${one.position} ${other.position}`
      if (named.has(pair)) continue
      named.add(pair)
      notes.push(pairNote(context, stepId, one, other))
    }
  }
  return notes
}

type Moment = { readonly stepId: string | null; readonly at: Seconds }

function momentsOf({ timeline }: CheckContext): readonly Moment[] {
  const moments: Moment[] = [{ stepId: null, at: seconds(0) }]
  for (const { stepId, startsAt, receivedAt } of timeline.steps) {
    moments.push({ stepId, at: startsAt }, { stepId, at: receivedAt })
  }
  return moments
}

type Pair = readonly [PlacedPlayer, PlacedPlayer]

/** Pairs nearer than the limit. Most pairs are far apart in one direction already, which is cheap to see. */
function closePairs(players: readonly PlacedPlayer[], limit: Metres): readonly Pair[] {
  const pairs: Pair[] = []
  for (let first = 0; first < players.length; first += 1) {
    const one = players[first]!
    const { x, y } = one.point
    for (let next = first + 1; next < players.length; next += 1) {
      const other = players[next]!
      if (Math.abs(x - other.point.x) >= limit || Math.abs(y - other.point.y) >= limit) continue
      if (apartMm(one, other) < millimetresOf(limit)) pairs.push([one, other])
    }
  }
  return pairs
}

function apartMm(one: PlacedPlayer, other: PlacedPlayer): Millimetres {
  return millimetresOf(distance(one.point, other.point))
}

function pairNote({ limits }: CheckContext, stepId: string | null, one: PlacedPlayer, other: PlacedPlayer): CheckNote {
  const limit = limits.placeMetres
  const apart = apartMm(one, other)
  return {
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
  }
}

import { arrivalOf, placeOnShaft, type Shaft } from './arrow'
import { gapBetween, offset, type PaperPoint } from './paper-point'

/** The middle of something drawn and how far it reaches. */
export type Taken = { readonly at: PaperPoint; readonly reach: number }

/** Where along a path a number may stand, the best first. */
const SHARES = [0.5, 0.38, 0.62, 0.26, 0.74] as const

/** Room a label should have round its middle, in metres; more does not make it better. */
const ENOUGH = 1.1

/**
 * A place beside a path for its number: the first that has room from what is drawn already, else the one with most room.
 * `taken` are middles of rings and labels with how far they reach.
 */
export function labelPlace(shaft: Shaft, aside: number, taken: readonly Taken[]): PaperPoint {
  const direction = arrivalOf(shaft)
  const candidates = SHARES.flatMap((share) =>
    [aside, -aside].map((side) => offset(placeOnShaft(shaft, share), direction, 0, side)),
  )
  return roomiest(candidates, shaft.tip, taken, ENOUGH)
}

/** Eighths of a turn in the order they are tried: above and to the left first, where a hand does not hide it. */
const EIGHTHS = [-1, 1, 0, 3, -3, 2, -2, 4] as const

/** A place round a middle, at a distance from it, with room from what is drawn already. */
export function placeAround(
  middle: PaperPoint,
  distance: number,
  taken: readonly Taken[],
  enough: number = ENOUGH,
): PaperPoint {
  const candidates = EIGHTHS.map((eighth) => {
    const angle = (eighth * Math.PI) / 4
    return { x: middle.x + distance * Math.sin(angle), y: middle.y - distance * Math.cos(angle) }
  })
  return roomiest(candidates, middle, taken, enough)
}

function roomiest(
  candidates: readonly PaperPoint[],
  otherwise: PaperPoint,
  taken: readonly Taken[],
  enough: number,
): PaperPoint {
  let best = otherwise
  let most = Number.NEGATIVE_INFINITY
  for (const candidate of candidates) {
    const room = Math.min(enough, ...taken.map(({ at, reach }) => gapBetween(at, candidate) - reach))
    if (room <= most) continue
    best = candidate
    most = room
  }
  return best
}

/** Places along a path that a label of another path should keep clear of. */
export function reachOfShaft(shaft: Shaft): readonly Taken[] {
  return [0, 0.2, 0.4, 0.6, 0.8, 1].map((share) => ({ at: placeOnShaft(shaft, share), reach: 0.3 }))
}

import type { FormatChoices } from '../formats'
import type { Space } from '../pitch'
import { type Millimetres, millimetres } from '../quantities'
import type { Place } from './pattern-places'
import type { SetOutCheck, SetOutStop } from './plan'
import type { SetOutItem } from './set-out-items'
import { type SeenLandmark, type WalkGround, walkGround } from './walk-ground'
import { replayLegs, type Walker, walkTo } from './walk-legs'
import { findTour } from './walk-tour'

export type SetOut = {
  readonly stops: readonly SetOutStop[]
  readonly paces: number
  readonly checks: readonly SetOutCheck[]
}

type Start = Place & { readonly from: SeenLandmark['landmark'] | 'bag' }

/**
 * The walk that puts everything out. It starts at the bag, which lies on the landmark of the own end that makes the walk
 * shortest; where no landmark can be found there, the bag is put down as the middle of the own goal and is the only landmark.
 */
export function setOutWalk(
  items: readonly SetOutItem[],
  space: Space,
  paceMm: Millimetres,
  choices?: FormatChoices,
): SetOut {
  const ground = walkGround(space, choices)
  const starts = startsOf(space, ground)
  const tour = findTour(starts, items)
  const start = starts[tour.start] ?? starts[0]
  const bag = bagStop(start)
  let walker: Walker = { ...start, heading: 0 }
  const stops: SetOutStop[] = [bag]
  for (const index of tour.order) {
    const item = items[index]
    if (!item) continue
    const walked = walkTo(walker, item, paceMm, ground)
    walker = walked.walker
    stops.push({
      number: stops.length,
      item: item.item,
      instead: null,
      upMm: item.upMm,
      rightMm: item.rightMm,
      from: walker.from,
      legs: walked.legs,
      purpose: item.purpose,
      mouth: item.mouth,
      activityIds: item.activityIds,
    })
  }
  const paces = stops.reduce((sum, stop) => sum + stop.legs.reduce((legs, leg) => legs + leg.paces, 0), 0)
  return { stops, paces, checks: setOutChecks(stops, paceMm) }
}

/** Places where the walk of every stop ends its legs, from the bag on, as counted paces lead there. */
export function replaySetOut(
  stops: readonly SetOutStop[],
  space: Space,
  paceMm: Millimetres,
  choices: FormatChoices | undefined,
): readonly (readonly Place[])[] {
  const ground = walkGround(space, choices)
  const bag = stops[0]
  let at: Pick<Walker, 'upMm' | 'rightMm' | 'heading'> | null = bag ? { ...bag, heading: 0 } : null
  return stops.map((stop) => {
    if (!at) return []
    const { ends, heading } = replayLegs(at, stop.legs, paceMm, ground)
    at = { ...(ends.at(-1) ?? at), heading }
    return ends
  })
}

/** Landmarks in the nearest quarter; with none, any; with none at all, the bag is the middle of the own goal. */
function startsOf(space: Space, ground: WalkGround): readonly [Start, ...Start[]] {
  const all = ground.landmarks.map(({ landmark, upMm, rightMm }): Start => ({ from: landmark, upMm, rightMm }))
  const near = all.filter((place) => place.upMm * 4 <= space.lengthMm)
  const [first, ...others] = near.length > 0 ? near : all
  return first ? [first, ...others] : [{ from: 'bag', upMm: millimetres(0), rightMm: millimetres(0) }]
}

function bagStop(start: Start): SetOutStop {
  return {
    number: 0,
    item: 'bag',
    instead: null,
    upMm: start.upMm,
    rightMm: start.rightMm,
    from: start.from,
    legs: [],
    purpose: '',
    mouth: null,
    activityIds: [],
  }
}

/** A check longer than this would count more errors than it finds. Common practice, no source. */
const CHECK_PACES_MAX = 30

/**
 * Two distances that prove the walk, as diagonals do: the two stops furthest apart within thirty paces, then the next two of
 * the others.
 */
export function setOutChecks(stops: readonly SetOutStop[], paceMm: Millimetres): readonly SetOutCheck[] {
  const first = furthestApart(stops.slice(1), paceMm)
  if (!first) return []
  const others = stops.slice(1).filter((stop) => stop.number !== first.fromNumber && stop.number !== first.toNumber)
  const second = furthestApart(others, paceMm)
  return second ? [first, second] : [first]
}

function furthestApart(stops: readonly SetOutStop[], paceMm: Millimetres): SetOutCheck | null {
  let best: SetOutCheck | null = null
  let longest = 0
  const limit = CHECK_PACES_MAX * paceMm
  stops.forEach((a, index) => {
    for (const b of stops.slice(index + 1)) {
      const up = a.upMm - b.upMm
      const right = a.rightMm - b.rightMm
      const squared = up * up + right * right
      if (squared <= longest || squared > limit * limit) continue
      longest = squared
      const lengthMm = Math.round(Math.sqrt(squared))
      const paces = Math.round(lengthMm / paceMm)
      best = { fromNumber: a.number, toNumber: b.number, paces, lengthMm: millimetres(lengthMm) }
    }
  })
  return best
}

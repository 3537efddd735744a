import { assert, habit, type Minutes, minutes } from '../quantities'
import type { PlannedPause } from './plan'

/** Minutes from one activity to the next: one adult alone needs longer. */
export const CHANGE_MINUTES_ALONE = habit(3)
export const CHANGE_MINUTES_WITH_TWO = habit(2)
export const CLOSE_MINUTES = habit(3)
/** An activity shorter than this is not worth its change-over. */
export const ACTIVITY_MINUTES_MIN = habit(8)

/** One activity's claim on the evening; limits hold where they can, the sum holds always. */
export type TimeClaim = {
  readonly weight: number
  readonly minMinutes: number
  readonly maxMinutes: number
  readonly title: string
}

export type FilledSlot = {
  readonly activities: readonly { readonly startMinute: Minutes; readonly minutes: Minutes }[]
  readonly pauses: readonly PlannedPause[]
}

/** How many activities fit a slot beside their change-overs, at least one. */
export function activitiesThatFit(slot: number, adults: number, wanted: number): number {
  for (let count = wanted; count > 1; count -= 1) {
    if (playingMinutes(slot, adults, count) >= count * ACTIVITY_MINUTES_MIN.value) return count
  }
  return Math.min(1, wanted)
}

/** Fills a slot with activities and named pauses so that they sum to it exactly, in whole minutes. */
export function fillSlot(slot: Minutes, adults: number, claims: readonly TimeClaim[]): FilledSlot {
  assert(claims.length > 0, 'an evening needs an activity')
  const shares = shareMinutes(playingMinutes(slot, adults, claims.length), claims)
  const change = changeMinutes(slot, adults, claims.length)
  const waterAfter = Math.floor((claims.length - 1) / 2)
  const activities: { startMinute: Minutes; minutes: Minutes }[] = []
  const pauses: PlannedPause[] = []
  let at = 0
  shares.forEach((share, index) => {
    activities.push({ startMinute: minutes(at), minutes: minutes(share) })
    at += share
    if (index === shares.length - 1) return
    const kind = index === waterAfter ? 'water' : 'change'
    const title = kind === 'water' ? 'Water, change over' : 'Change over'
    if (change > 0) pauses.push({ kind, title, startMinute: minutes(at), minutes: minutes(change) })
    at += change
  })
  if (at < slot)
    pauses.push({ kind: 'close', title: 'Bring it in', startMinute: minutes(at), minutes: minutes(slot - at) })
  return { activities, pauses }
}

/** Minutes of an evening that are left for playing. */
export function playingMinutes(slot: number, adults: number, count: number): number {
  return slot - pauseMinutes(slot, adults, count)
}

function pauseMinutes(slot: number, adults: number, count: number): number {
  return (count - 1) * changeMinutes(slot, adults, count) + closeMinutes(slot)
}

function closeMinutes(slot: number): number {
  return slot >= 20 ? CLOSE_MINUTES.value : 0
}

/** In a slot too short for its own change-overs they shrink to nothing rather than eat the football. */
function changeMinutes(slot: number, adults: number, count: number): number {
  const usual = adults >= 2 ? CHANGE_MINUTES_WITH_TWO.value : CHANGE_MINUTES_ALONE.value
  return slot - closeMinutes(slot) - (count - 1) * usual >= count ? usual : 0
}

/** Whole minutes by weight (largest remainder, ties to the earlier), then moved between neighbours until the limits hold. */
export function shareMinutes(total: number, claims: readonly TimeClaim[]): readonly number[] {
  const weights = claims.map((claim) => Math.max(1, claim.weight))
  const sum = weights.reduce((a, b) => a + b, 0)
  const shares = weights.map((weight) => Math.floor((weight * total) / sum))
  const byRemainder = weights
    .map((weight, index) => ({ index, remainder: (weight * total) % sum }))
    .sort((a, b) => b.remainder - a.remainder || a.index - b.index)
  let left = total - shares.reduce((a, b) => a + b, 0)
  for (const { index } of byRemainder) {
    if (left === 0) break
    shares[index] = (shares[index] ?? 0) + 1
    left -= 1
  }
  return keepLimits(shares, claims)
}

/** One minute at a time from whoever is furthest over to whoever is furthest under; stops when no move helps. */
function keepLimits(shares: number[], claims: readonly TimeClaim[]): readonly number[] {
  const over = (i: number) => (shares[i] ?? 0) - (claims[i]?.maxMinutes ?? 0)
  const under = (i: number) => (claims[i]?.minMinutes ?? 0) - (shares[i] ?? 0)
  const indexes = claims.map((_, index) => index)
  const most = (score: (i: number) => number, among: readonly number[]) =>
    among.reduce<number | null>((best, i) => (best === null || score(i) > score(best) ? i : best), null)
  for (let guard = 0; guard < 400; guard += 1) {
    const tooLong = most(
      over,
      indexes.filter((i) => over(i) > 0),
    )
    const tooShort = most(
      under,
      indexes.filter((i) => under(i) > 0),
    )
    if (tooLong === null && tooShort === null) break
    const giver =
      tooLong ??
      most(
        (i) => -under(i),
        indexes.filter((i) => under(i) < 0),
      )
    const taker =
      tooShort ??
      most(
        (i) => -over(i),
        indexes.filter((i) => over(i) < 0),
      )
    if (giver === null || taker === null || giver === taker) break
    shares[giver] = (shares[giver] ?? 0) - 1
    shares[taker] = (shares[taker] ?? 0) + 1
  }
  return shares
}

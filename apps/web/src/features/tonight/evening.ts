import type { Kit, KitDate, Turnout } from '@espalier/domain/session'
import * as z from 'zod/mini'

/**
 * One evening as the coach ticks it. Everybody is here until struck out: most come, so most evenings need a tap or two.
 * Kept on the phone under the date's id.
 */
const evening = z.strictObject({
  v: z.literal(1),
  dateId: z.string(),
  /** The evening's day; after it the ticks leave the phone. */
  localDate: z.string(),
  /** Children of the squad who did not come. */
  away: z.array(z.string()),
  sitsOut: z.array(z.string()),
  /** Initials only, for this evening. */
  guests: z.array(z.string()),
  adults: z.int(),
  spaceId: z.nullable(z.string()),
  /** Stops of the set-out walk already put down, the bag included. */
  putDown: z.int(),
  /** The plan sent last, and what it was made from. */
  kept: z.nullable(z.strictObject({ planId: z.string(), inputsHash: z.string() })),
  /** The report sent from this phone. */
  reportId: z.nullable(z.string()),
})
export type Evening = z.infer<typeof evening>
export const eveningShape: z.ZodMiniType<Evening> = evening

export type EveningChange =
  | { readonly kind: 'come-or-not'; readonly playerId: string }
  | { readonly kind: 'sits-out'; readonly playerId: string }
  | { readonly kind: 'add-guest'; readonly initials: string }
  | { readonly kind: 'remove-guest'; readonly at: number }
  | { readonly kind: 'adults'; readonly adults: number }
  | { readonly kind: 'space'; readonly spaceId: string }
  | { readonly kind: 'put-down'; readonly stops: number }
  | { readonly kind: 'plan-kept'; readonly planId: string; readonly inputsHash: string }
  /** The club did not take the plan: the next use sends it again. */
  | { readonly kind: 'plan-refused' }
  | { readonly kind: 'reported'; readonly reportId: string | null }

export const ADULTS_MOST = 2
export const GUESTS_MOST = 12
/** As the plan's own ids take it. */
const INITIALS_MOST = 8

export function newEvening(kit: Kit, date: KitDate): Evening {
  return {
    v: 1,
    dateId: date.dateId,
    localDate: date.localDate,
    away: [],
    sitsOut: [],
    guests: [],
    adults: Math.min(ADULTS_MOST, Math.max(1, kit.adults.length)),
    spaceId: date.spaceId ?? kit.spaces[0]?.spaceId ?? null,
    putDown: 0,
    kept: null,
    reportId: null,
  }
}

export function changeEvening(before: Evening, change: EveningChange): Evening {
  switch (change.kind) {
    case 'come-or-not': {
      // Whoever comes back plays; whoever goes no longer sits out.
      const sitsOut = before.sitsOut.filter((id) => id !== change.playerId)
      return { ...before, away: toggled(before.away, change.playerId), sitsOut }
    }
    case 'sits-out': {
      const away = before.away.filter((id) => id !== change.playerId)
      return { ...before, away, sitsOut: toggled(before.sitsOut, change.playerId) }
    }
    case 'add-guest': {
      const initials = initialsOf(change.initials)
      const isRoom = initials !== '' && before.guests.length < GUESTS_MOST
      return isRoom ? { ...before, guests: [...before.guests, initials] } : before
    }
    case 'remove-guest':
      return { ...before, guests: before.guests.filter((_, index) => index !== change.at) }
    case 'adults':
      return { ...before, adults: Math.min(ADULTS_MOST, Math.max(1, change.adults)) }
    case 'space':
      // Another space is another walk: what was put down lies elsewhere.
      return change.spaceId === before.spaceId ? before : { ...before, spaceId: change.spaceId, putDown: 0 }
    case 'put-down':
      return { ...before, putDown: Math.max(0, change.stops) }
    case 'plan-kept':
      return { ...before, kept: { planId: change.planId, inputsHash: change.inputsHash } }
    case 'plan-refused':
      return { ...before, kept: null }
    case 'reported':
      return { ...before, reportId: change.reportId }
  }
}

/** Letters without spaces: a guest's name is never written down. */
export function initialsOf(written: string): string {
  return [...written.replace(/[\s.]/gu, '')].slice(0, INITIALS_MOST).join('').toUpperCase()
}

/** The facts the plan is made from. Ids of children who have left the squad meanwhile count no more. */
export function turnoutOf(evening: Evening, kit: Kit): Turnout {
  const ids = kit.squad.map((member) => member.playerId)
  const here = ids.filter((id) => !evening.away.includes(id))
  return {
    here,
    sitsOut: evening.sitsOut.filter((id) => here.includes(id)),
    guests: evening.guests,
    adults: evening.adults,
  }
}

function toggled(ids: readonly string[], id: string): string[] {
  return ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id]
}

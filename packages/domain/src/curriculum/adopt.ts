import { ok, type Result, refuse } from '../quantities'

export type AdoptRefusal = { readonly code: 'version-not-offered' | 'nothing-changed' | 'not-allowed' }

export type AdoptionWish = {
  /** A version of the club, or null where there is none by that number. */
  readonly version: { readonly offered: boolean } | null
  /** The version in force on the day from which the new one shall be followed. */
  readonly following: { readonly curriculumId: string; readonly number: number } | null
  readonly wished: { readonly curriculumId: string; readonly number: number }
  readonly byDirector: boolean
  /** The club's own choice: may a coach move the own team? */
  readonly coachesAdopt: boolean
}

/** Whether a team may follow a version from a day on. */
export function decideAdopt(wish: AdoptionWish): Result<true, AdoptRefusal> {
  if (!wish.byDirector && !wish.coachesAdopt) return refuse({ code: 'not-allowed' })
  if (wish.version === null || !wish.version.offered) return refuse({ code: 'version-not-offered' })
  const { following, wished } = wish
  if (following !== null && following.curriculumId === wished.curriculumId && following.number === wished.number)
    return refuse({ code: 'nothing-changed' })
  return ok(true)
}

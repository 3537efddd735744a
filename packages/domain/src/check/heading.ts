import type { Sourced } from '../quantities'
import type { CheckContext } from './context'

const UNDER_12 = 'U.S. Soccer concussion rules, 2016: no heading at U11 and younger, whatever format they play'

/** Years in an age group such as U11; null where the name says none. */
export function ageOf(ageGroup: string): number | null {
  const age = /^U(\d{1,2})$/u.exec(ageGroup.trim())?.[1]
  return age === undefined ? null : Number(age)
}

/** May the children of this pattern head the ball: by the format, and never at U11 and younger who play up. */
export function isHeadingAllowed({ document, format }: CheckContext): Sourced<boolean> {
  const age = ageOf(document.ageGroup)
  if (format.headingAllowed.value && age !== null && age <= 11) {
    return { value: false, kind: 'published', source: UNDER_12 }
  }
  return format.headingAllowed
}

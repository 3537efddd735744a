import type { CheckContext } from '../context'
import { ageOf, isHeadingAllowed } from '../heading'
import type { CheckNote } from '../note'
import { standingReceivers } from './lofted-to-standing'

const LIMIT =
  'U.S. Soccer concussion rules, 2016: at U12 and U13 at most 30 minutes of heading practice and 15 to 20 headers a week'
/** The lower end of the printed range. */
const HEADERS_A_WEEK = 15

/**
 * At U12 and U13 heading is allowed in matches and limited in training, so a pattern that ends at the head uses up what a
 * child may do in a week. A caution, not medical advice; local rules may be stricter.
 */
export function headingLimitNotes(context: CheckContext): readonly CheckNote[] {
  const age = ageOf(context.document.ageGroup)
  if (age === null || age < 12 || age > 13 || !isHeadingAllowed(context).value) return []
  return standingReceivers(context).map(({ step, receiver }) => ({
    code: 'heading-limit',
    severity: 'note',
    stepId: step.stepId,
    position: receiver,
    value: 1,
    limit: HEADERS_A_WEEK,
    unit: 'touches',
    sourceKind: 'published',
    source: LIMIT,
    sentence: `Each time ${receiver} heads this ball counts towards the week: at most ${HEADERS_A_WEEK} headers a player at this age. Your club's and local rules decide.`,
    remedy: null,
  }))
}

import type { PatternSummary } from '@espalier/contract/patterns'
import { type FormatId, formatOf } from '@espalier/domain/formats'
import Link from 'next/link'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import type { PartChoice } from '../writing/blank'

/** The club's patterns; one drawn for another game stays in the list with its reason. */
export function patternChoices(
  patterns: readonly PatternSummary[],
  formatId: FormatId,
  current: string,
): readonly PartChoice[] {
  const known = patterns.map((pattern) => ({
    value: pattern.patternId,
    label: pattern.title,
    off:
      pattern.formatId === formatId ? null : curriculaMessage('drawnFor', { format: formatOf(pattern.formatId).name }),
  }))
  const isGone = !patterns.some(({ patternId }) => patternId === current)
  return isGone ? [{ value: current, label: curriculaMessage('patternGone'), off: null }, ...known] : known
}

type PatternStateProps = { readonly clubId: string; readonly pattern: PatternSummary | undefined }

/** The problem a pattern answers, and what of it is still to fix before anything can be published. */
export function PatternState({ clubId, pattern }: PatternStateProps) {
  if (pattern === undefined) return null
  return (
    <p className="flex flex-wrap items-baseline gap-x-3 text-small text-ink-soft">
      <Link
        href={pageTo(pages.pattern, { clubId, patternId: pattern.patternId })}
        className="inline-flex min-h-target items-center"
      >
        {pattern.problem === '' ? curriculaMessage('openPattern') : pattern.problem}
      </Link>
      {pattern.toFix > 0 && (
        <span className="border-l-[7px] border-double border-ink pl-2 font-semibold text-ink">
          {curriculaMessage(pattern.toFix === 1 ? 'oneToFix' : 'toFix', { count: pattern.toFix })}
        </span>
      )}
    </p>
  )
}

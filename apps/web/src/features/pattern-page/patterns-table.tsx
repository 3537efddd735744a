import type { PatternSummary } from '@espalier/contract/patterns'
import { formatOf } from '@espalier/domain/formats'
import Link from 'next/link'
import { patternsMessage } from '../../messages/patterns'
import { pages, pageTo } from '../../paths'
import { type Column, Table } from '../../ui/table/table'

type PatternsTableProps = { readonly clubId: string; readonly patterns: readonly PatternSummary[] }

/** Patterns by the problem each answers, for that is what one comes with. */
export function PatternsTable({ clubId, patterns }: PatternsTableProps) {
  return (
    <Table
      caption={patternsMessage('caption')}
      captionHidden
      columns={columnsOf(clubId)}
      rows={byProblem(patterns)}
      rowKey={(pattern) => pattern.patternId}
    />
  )
}

/** In the order of their problems; what answers none yet comes last. */
export function byProblem(patterns: readonly PatternSummary[]): readonly PatternSummary[] {
  const rank = (pattern: PatternSummary) => (pattern.problem === '' ? 1 : 0)
  return [...patterns].sort(
    (one, other) =>
      rank(one) - rank(other) ||
      one.problem.localeCompare(other.problem, 'en') ||
      one.title.localeCompare(other.title, 'en'),
  )
}

/** Patterns whose problem or title holds every word that was looked for. */
export function findPatterns(patterns: readonly PatternSummary[], words: string): readonly PatternSummary[] {
  const wanted = words.toLowerCase().split(/\s+/).filter(Boolean)
  return patterns.filter(({ problem, title }) => {
    const said = `${problem} ${title}`.toLowerCase()
    return wanted.every((word) => said.includes(word))
  })
}

function columnsOf(clubId: string): readonly Column<PatternSummary>[] {
  return [
    {
      title: patternsMessage('problem'),
      namesRow: true,
      cell: ({ patternId, problem, title }) => (
        <Link
          href={pageTo(pages.pattern, { clubId, patternId })}
          className="flex min-h-target flex-col justify-center no-underline hover:underline"
        >
          <span className="voice-club text-script font-[560]">
            {problem === '' ? patternsMessage('problemMissing') : problem}
          </span>
          <span className="voice-club font-normal text-ink-soft">{title}</span>
        </Link>
      ),
    },
    {
      title: patternsMessage('game'),
      cell: ({ formatId, formation }) => patternsMessage('gameIn', { format: formatOf(formatId).name, formation }),
    },
    { title: patternsMessage('ageGroup'), cell: ({ ageGroup }) => ageGroup },
    { title: patternsMessage('steps'), align: 'end', cell: ({ steps }) => steps },
    {
      title: patternsMessage('toFix'),
      align: 'end',
      cell: ({ toFix }) =>
        toFix === 0 ? patternsMessage('toFixNone') : <span className="font-semibold">{toFix}</span>,
    },
  ]
}

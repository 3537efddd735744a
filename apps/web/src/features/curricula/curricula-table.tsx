import type { CurriculumSummary } from '@espalier/contract/curricula'
import { formatOf } from '@espalier/domain/formats'
import Link from 'next/link'
import { curriculaMessage } from '../../messages/curricula'
import { pages, pageTo } from '../../paths'
import { dateWords } from '../../shell/dates'
import { type Column, Table } from '../../ui/table/table'
import { countWordsOf } from './draft-words'
import { dayOf } from './version-words'

type CurriculaTableProps = {
  readonly clubId: string
  readonly zone: string
  readonly curricula: readonly CurriculumSummary[]
}

/** Every curriculum of the club with what is offered to its teams. */
export function CurriculaTable({ clubId, zone, curricula }: CurriculaTableProps) {
  const columns: readonly Column<CurriculumSummary>[] = [
    {
      title: curriculaMessage('curriculum'),
      namesRow: true,
      cell: ({ curriculumId, name }) => (
        <Link
          href={pageTo(pages.curriculum, { clubId, curriculumId })}
          className="voice-club inline-flex min-h-target items-center text-script font-[560]"
        >
          {name}
        </Link>
      ),
    },
    {
      title: curriculaMessage('forWhom'),
      cell: ({ ageGroup, formatId }) =>
        curriculaMessage('gameLine', { age: ageGroup, format: formatOf(formatId).name }),
    },
    { title: curriculaMessage('stages'), cell: ({ stages }) => countWordsOf(stages, 'oneStage') },
    {
      title: curriculaMessage('offered'),
      cell: ({ versions }) => {
        const offered = versions.find((version) => version.offered)
        return offered === undefined
          ? curriculaMessage('neverPublished')
          : curriculaMessage('offeredSince', {
              number: offered.number,
              date: dateWords(dayOf(offered.publishedAt, zone)),
            })
      },
    },
  ]
  return (
    <Table
      caption={curriculaMessage('caption')}
      captionHidden
      columns={columns}
      rows={curricula}
      rowKey={({ curriculumId }) => curriculumId}
    />
  )
}

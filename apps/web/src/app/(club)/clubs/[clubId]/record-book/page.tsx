import { ledgerEntries, ledgerHead } from '@espalier/contract/ledger'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape } from '@espalier/contract/places'
import Link from 'next/link'
import { readFromApi } from '../../../../../api/server'
import { BookHead } from '../../../../../features/record-book/book-head'
import { CheckPress } from '../../../../../features/record-book/check-press'
import { entryWords } from '../../../../../features/record-book/entry-words'
import { ledgerMessage } from '../../../../../messages/ledger'
import { pages, pageTo } from '../../../../../paths'
import { ClubPage } from '../../../../../shell/club-page'
import { instantWords } from '../../../../../shell/dates'
import { Section } from '../../../../../shell/section'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'
import { Table } from '../../../../../ui/table/table'

// Few enough to read on a phone; the older ones are one press away.
const LINES_SHOWN = 25

type Props = {
  readonly params: Promise<{ readonly clubId: string }>
  readonly searchParams: Promise<{ readonly before?: string | string[] }>
}

export default async function RecordBookPage({ params, searchParams }: Props) {
  const { clubId } = await params
  const { before } = await searchParams
  const page = typeof before === 'string' && /^\d{1,15}$/.test(before) ? { before } : {}
  const [club, head, list] = await Promise.all([
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
    readFromApi(pathTo(paths.ledgerHead, { clubId }), ledgerHead),
    readFromApi(pathTo(paths.ledgerEntries, { clubId }, page), ledgerEntries),
  ])
  const entries = list.entries.slice(0, LINES_SHOWN)
  const next = list.entries.length > LINES_SHOWN ? String(entries.at(-1)?.seq) : list.next
  return (
    <ClubPage clubId={clubId} title={ledgerMessage('title')} lead={ledgerMessage('lead')}>
      <BookHead head={head} zone={club.zone} />
      <Section id="lines" title={ledgerMessage('entriesTitle')}>
        {entries.length === 0 ? (
          <EmptyState>{ledgerMessage('empty')}</EmptyState>
        ) : (
          <Table
            caption={ledgerMessage('caption')}
            captionHidden
            rows={entries}
            rowKey={(entry) => entry.entryId}
            columns={[
              { title: ledgerMessage('line'), namesRow: true, align: 'end', cell: (entry) => entry.seq + 1 },
              { title: ledgerMessage('what'), cell: (entry) => entryWords(entry.kind) },
              { title: ledgerMessage('when'), cell: (entry) => instantWords(entry.at, club.zone) },
              {
                title: ledgerMessage('check'),
                cell: (entry) => (
                  <CheckPress clubId={clubId} entryId={entry.entryId} line={entry.seq + 1} head={head} />
                ),
              },
            ]}
          />
        )}
        {next !== null && (
          <Link
            href={pageTo(pages.ledger, { clubId }, { before: next })}
            className="inline-flex min-h-target items-center"
          >
            {ledgerMessage('older')}
          </Link>
        )}
      </Section>
    </ClubPage>
  )
}

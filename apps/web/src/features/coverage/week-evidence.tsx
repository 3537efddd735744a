import type { CoverageCell } from '@espalier/contract/coverage'
import type { LedgerHead } from '@espalier/contract/ledger'
import type { RecordRow } from '@espalier/contract/records'
import Link from 'next/link'
import { coverageMessage } from '../../messages/coverage'
import { dayWords, instantWords } from '../../shell/dates'
import { BookHead } from '../record-book/book-head'
import { CheckPress } from '../record-book/check-press'
import { pressureWords } from './pressure-words'

type WeekEvidenceProps = {
  readonly clubId: string
  readonly evidence: CoverageCell
  readonly head: LedgerHead
  readonly zone: string
  readonly closeHref: string
}

/** From a cell to the reports behind it, and from each report to its line in the record book. */
export function WeekEvidence({ clubId, evidence, head, zone, closeHref }: WeekEvidenceProps) {
  const { cell, stageTitle, teamName, records } = evidence
  return (
    <section aria-labelledby="week" className="-mx-3 flex flex-col gap-4 border-y-2 border-ink bg-here/40 px-3 py-4">
      <h2 id="week" className="text-lead leading-tight font-semibold">
        {coverageMessage('cellTitle', { stage: stageTitle, team: teamName })}
      </h2>
      <p>
        {coverageMessage('cellLead', {
          day: dayWords(cell.week),
          planned: cell.plannedMinutes,
          done: cell.doneMinutes,
        })}{' '}
        {cell.firstPlannedMinutes !== cell.plannedMinutes &&
          coverageMessage('cellFirst', { first: cell.firstPlannedMinutes })}
      </p>
      {records.length === 0 && <p>{coverageMessage('noRecords')}</p>}
      {records.map((record) => (
        <article key={record.recordId} className="flex flex-col gap-3 border-t border-wire pt-3">
          <h3 className="font-semibold">{coverageMessage('record', { day: dayWords(record.localDate) })}</h3>
          <RecordFacts record={record} stageId={cell.stageId} zone={zone} />
          <CheckPress clubId={clubId} entryId={record.entryId} line={record.entrySeq + 1} head={head} />
        </article>
      ))}
      {records.length > 0 && <BookHead head={head} zone={zone} />}
      <Link href={closeHref} className="inline-flex min-h-target items-center">
        {coverageMessage('close')}
      </Link>
    </section>
  )
}

const GOT_OUT = { none: 'gotOutNone', some: 'gotOutSome', half: 'gotOutHalf', most: 'gotOutMost' } as const

type RecordFactsProps = { readonly record: RecordRow; readonly stageId: string; readonly zone: string }

function RecordFacts({ record, stageId, zone }: RecordFactsProps) {
  const stage = record.stages.find((one) => one.stageId === stageId)
  const turnout = { count: record.turnout, guests: record.guests }
  const facts: readonly (readonly [string, string])[] = [
    [
      coverageMessage('minutes'),
      coverageMessage('minutesOfStage', { stage: stage?.minutes ?? 0, whole: record.minutes }),
    ],
    [coverageMessage('turnout'), coverageMessage(record.guests === 0 ? 'turnoutWords' : 'turnoutGuests', turnout)],
    ...(stage === undefined
      ? []
      : ([
          [coverageMessage('howFar'), pressureWords(stage.pressureReached)],
          [coverageMessage('gotOut'), `${coverageMessage(GOT_OUT[stage.gotOut])} (${coverageMessage('coarse')})`],
        ] as const)),
    [coverageMessage('author'), record.author],
    [coverageMessage('secondAdult'), record.secondAdult ?? coverageMessage('noSecondAdult')],
    [
      coverageMessage('reportedAt'),
      `${instantWords(record.reportedAt, zone)}${record.late ? `, ${coverageMessage('late')}` : ''}`,
    ],
    [coverageMessage('standing'), coverageMessage(record.standing)],
    [
      coverageMessage('changes'),
      record.changes.length === 0
        ? coverageMessage('noChanges')
        : record.changes.map(({ chip }) => coverageMessage(chip)).join(', '),
    ],
  ]
  return (
    <dl className="grid max-w-text grid-cols-[auto_1fr] gap-x-4 gap-y-1">
      {facts.map(([term, value]) => (
        <div key={term} className="contents">
          <dt className="text-ink-soft">{term}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  )
}

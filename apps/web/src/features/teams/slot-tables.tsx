import type { SpaceRow, slots, trainingDates } from '@espalier/contract/places'
import type * as z from 'zod/mini'
import { teamsMessage } from '../../messages/teams'
import { dateWords, dayWords, todayIn } from '../../shell/dates'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { Table } from '../../ui/table/table'
import { weekdayName } from './weekdays'

type Slot = z.infer<typeof slots>['slots'][number]
type TrainingDate = z.infer<typeof trainingDates>['dates'][number]
type SpaceNames = readonly Pick<SpaceRow, 'spaceId' | 'space'>[]

const DATES_SHOWN = 8

function spaceWords(spaceId: string | null, spaces: SpaceNames): string {
  const found = spaces.find((row) => row.spaceId === spaceId)
  return found === undefined ? teamsMessage('noSpace') : `${found.space.venue}, ${found.space.name}`
}

type SlotTableProps = { readonly slots: readonly Slot[]; readonly spaces: SpaceNames; readonly zone: string }

export function SlotTable({ slots: rows, spaces, zone }: SlotTableProps) {
  if (rows.length === 0) return <EmptyState>{teamsMessage('noSlots')}</EmptyState>
  return (
    <>
      <Table
        caption={teamsMessage('slotCaption')}
        captionHidden
        rows={rows}
        rowKey={(slot) => slot.slotId}
        columns={[
          { title: teamsMessage('day'), namesRow: true, cell: (slot) => weekdayName(slot.weekday) },
          { title: teamsMessage('start'), cell: (slot) => slot.localStart },
          { title: teamsMessage('minutes'), align: 'end', cell: (slot) => slot.minutes },
          { title: teamsMessage('space'), cell: (slot) => spaceWords(slot.spaceId, spaces) },
          { title: teamsMessage('from'), cell: (slot) => dateWords(slot.validFrom) },
          { title: teamsMessage('until'), cell: (slot) => dateWords(slot.validTo) },
        ]}
      />
      <p className="text-small text-ink-soft">{teamsMessage('zone', { zone })}</p>
    </>
  )
}

const STATE_WORDS = {
  on: 'stateOn',
  cancelled: 'stateCancelled',
  moved: 'stateMoved',
} as const satisfies Record<TrainingDate['state'], string>

type DateTableProps = { readonly dates: readonly TrainingDate[]; readonly spaces: SpaceNames; readonly zone: string }

/** The dates to come, next one first; the past is on the page of planned and done. */
export function DateTable({ dates, spaces, zone }: DateTableProps) {
  const today = todayIn(zone)
  const rows = dates.filter((date) => date.localDate >= today).slice(0, DATES_SHOWN)
  if (rows.length === 0) return <EmptyState>{teamsMessage('noDates')}</EmptyState>
  return (
    <Table
      caption={teamsMessage('dateCaption')}
      captionHidden
      rows={rows}
      rowKey={(date) => date.dateId}
      columns={[
        { title: teamsMessage('date'), namesRow: true, cell: (date) => dayWords(date.localDate) },
        { title: teamsMessage('start'), cell: (date) => date.localStart },
        { title: teamsMessage('minutes'), align: 'end', cell: (date) => date.minutes },
        { title: teamsMessage('space'), cell: (date) => spaceWords(date.spaceId, spaces) },
        {
          title: teamsMessage('state'),
          cell: (date) => teamsMessage(date.reported ? 'reported' : STATE_WORDS[date.state]),
        },
      ]}
    />
  )
}

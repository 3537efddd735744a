import { pages, pageTo } from '../../paths'

/** The phone's pages are one static page; which one shows stands in the query. */
export const FIELD_VIEWS = ['tonight', 'plan', 'set-out', 'line-ups', 'sheet', 'report'] as const
export type FieldView = (typeof FIELD_VIEWS)[number]

export type FieldAddress = {
  readonly clubId: string
  readonly teamId: string
  readonly view: FieldView
  /** Another date than tonight's, as when yesterday is reported today. */
  readonly dateId: string | null
}

/** Reads the address's query; null where it names no club or team. An unknown view is tonight. */
export function readFieldAddress(search: string): FieldAddress | null {
  const query = new URLSearchParams(search)
  const clubId = query.get('club')
  const teamId = query.get('team')
  if (clubId === null || clubId === '' || teamId === null || teamId === '') return null
  const named = query.get('view')
  const dateId = query.get('date')
  return {
    clubId,
    teamId,
    view: FIELD_VIEWS.find((view) => view === named) ?? 'tonight',
    dateId: dateId === '' ? null : dateId,
  }
}

/** The address of a view; tonight is the plain one, so that the page people keep is short. */
export function fieldHref({ clubId, teamId, view, dateId }: FieldAddress): string {
  return pageTo(
    pages.field,
    {},
    {
      club: clubId,
      team: teamId,
      ...(view === 'tonight' ? {} : { view }),
      ...(dateId === null ? {} : { date: dateId }),
    },
  )
}

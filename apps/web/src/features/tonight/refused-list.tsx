import type { Kit } from '@espalier/domain/session'
import { tonightMessage } from '../../messages/tonight'
import type { Waiting } from '../../offline/waiting'
import { dayWords } from '../../shell/dates'
import { Button } from '../../ui/button/button'

type RefusedListProps = {
  readonly kit: Kit
  readonly waiting: readonly Waiting[]
  readonly onDismiss: (waiting: Waiting) => void
}

/** Writes the club did not take: each stays with why and with all it says, until its owner takes it off. */
export function RefusedList({ kit, waiting, onDismiss }: RefusedListProps) {
  const refused = waiting.filter((each) => each.refusal !== null)
  if (refused.length === 0) return null
  return (
    <section className="flex flex-col gap-3 border-l-[7px] border-double border-ink pl-3">
      <h2 className="font-bold">{tonightMessage('refusedTitle')}</h2>
      <ul className="flex flex-col gap-3">
        {refused.map((each) => (
          <li key={each.operation.id}>
            <p className="font-semibold">{nameOf(each, kit)}</p>
            <p>{[each.refusal?.title, ...(each.refusal?.details ?? [])].join(': ')}.</p>
            <details>
              <summary className="flex min-h-target items-center underline">{tonightMessage('refusedContent')}</summary>
              <pre className="max-h-64 overflow-y-auto text-small whitespace-pre-wrap [overflow-wrap:anywhere]">
                {JSON.stringify(each.operation, null, 1)}
              </pre>
            </details>
            <Button onClick={() => onDismiss(each)}>{tonightMessage('refusedDismiss')}</Button>
          </li>
        ))}
      </ul>
    </section>
  )
}

const NAMES = {
  'report-session': 'refusedReport',
  'keep-plan': 'refusedPlan',
  'mark-attendance': 'refusedAttendance',
} as const

function nameOf({ operation }: Waiting, kit: Kit): string {
  const known = Object.entries(NAMES).find(([op]) => op === operation.op)
  const body = operation['body']
  const dateId = typeof body === 'object' && body !== null && 'dateId' in body ? body.dateId : null
  const date = kit.dates.find((each) => each.dateId === dateId)
  if (known === undefined || date === undefined) return tonightMessage('refusedOther')
  return tonightMessage(known[1], { day: dayWords(date.localDate) })
}

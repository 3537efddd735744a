import Link from 'next/link'
import { coverageMessage } from '../../messages/coverage'
import { shortDayWords } from '../../shell/dates'
import type { Cell, TeamTrellis } from './team-trellis'
import { WeekBar } from './week-bar'

type TeamWeeksProps = {
  readonly trellis: TeamTrellis
  /** The Monday of the week that is running: what comes after it is still to come. */
  readonly thisWeek: string
  readonly cellHref: (cell: Cell) => string
  /** The cell that stands open beside the table. */
  readonly open: Pick<Cell, 'teamId' | 'stageId' | 'week'> | null
}

/** One trellis a team: stages are wires, weeks are columns. On a phone each stage lists its weeks in words. */
export function TeamWeeks({ trellis, thisWeek, cellHref, open }: TeamWeeksProps) {
  const isOpen = (cell: Cell) =>
    open !== null && open.teamId === cell.teamId && open.stageId === cell.stageId && open.week === cell.week
  return (
    <>
      <div className="overflow-x-auto max-desk:hidden print:overflow-visible">
        <table className="border-collapse text-left">
          <caption className="sr-only">{coverageMessage('tableCaption', { team: trellis.name })}</caption>
          <thead>
            <tr>
              <th scope="col" className="w-60 pr-4 text-small font-semibold">
                {coverageMessage('stage')}
              </th>
              {trellis.weeks.map((week) => (
                <th
                  key={week}
                  scope="col"
                  className="w-12 text-center text-fine font-normal whitespace-nowrap text-ink-soft"
                >
                  {shortDayWords(week)}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {trellis.rows.map((row) => (
              <tr key={row.stageId}>
                <th scope="row" className="min-w-48 pr-4 align-bottom font-[480]">
                  <span className="voice-club">{row.title}</span>
                </th>
                {row.cells.map((cell, column) => (
                  <td key={trellis.weeks[column]} className="align-bottom">
                    {cell === null ? (
                      <WeekBar cell={null} toCome={false} />
                    ) : (
                      <CellLink
                        cell={cell}
                        href={cellHref(cell)}
                        here={isOpen(cell)}
                        team={trellis.name}
                        stage={row.title}
                      >
                        <WeekBar cell={cell} toCome={cell.week >= thisWeek} />
                      </CellLink>
                    )}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ul className="flex flex-col gap-4 desk:hidden print:hidden">
        {trellis.rows.map((row) => (
          <li key={row.stageId}>
            <p className="voice-club">{row.title}</p>
            <ul>
              {row.cells.map((cell) =>
                cell === null ? null : (
                  <li key={cell.week} className="border-b border-wire">
                    <CellLink
                      cell={cell}
                      href={cellHref(cell)}
                      here={isOpen(cell)}
                      team={trellis.name}
                      stage={row.title}
                    >
                      <span className="flex min-h-target items-center justify-between gap-4">
                        <span>{coverageMessage('weekOf', { day: shortDayWords(cell.week) })}</span>
                        <span className="tabular-nums">{minutesWords(cell, cell.week >= thisWeek)}</span>
                      </span>
                    </CellLink>
                  </li>
                ),
              )}
            </ul>
          </li>
        ))}
      </ul>
    </>
  )
}

function minutesWords({ plannedMinutes, doneMinutes }: Cell, toCome: boolean): string {
  if (toCome && doneMinutes === 0) return coverageMessage('toCome', { planned: plannedMinutes })
  return plannedMinutes === 0
    ? coverageMessage('notPlanned', { done: doneMinutes })
    : coverageMessage('doneOfPlanned', { done: doneMinutes, planned: plannedMinutes })
}

type CellLinkProps = {
  readonly cell: Cell
  readonly href: string
  readonly here: boolean
  readonly team: string
  readonly stage: string
  readonly children: React.ReactNode
}

function CellLink({ cell, href, here, team, stage, children }: CellLinkProps) {
  const words = coverageMessage('cellWords', {
    team,
    stage,
    day: shortDayWords(cell.week),
    planned: cell.plannedMinutes,
    done: cell.doneMinutes,
  })
  const late = cell.late === 0 ? '' : `, ${coverageMessage('cellLate', { count: cell.late })}`
  return (
    <Link
      href={href}
      aria-label={`${words}${late}`}
      aria-current={here ? 'true' : undefined}
      className={`block no-underline ${here ? 'bg-here' : ''}`}
    >
      {children}
    </Link>
  )
}

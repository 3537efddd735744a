import type { Cell } from './team-trellis'

const WIDTH = 48
const WIRE = 40
const MOST_MINUTES = 45
const UNITS_PER_MINUTE = 36 / MOST_MINUTES

const heightOf = (minutes: number) => Math.min(minutes, MOST_MINUTES) * UNITS_PER_MINUTE

/**
 * One week on the wire: the bar is what was coached, the line across it what was planned (dotted while it is still to
 * come), a hollow bar what was planned and not coached, a stroke under the wire a late report. The link around it says
 * the same in words.
 */
export function WeekBar({ cell, toCome }: { readonly cell: Cell | null; readonly toCome: boolean }) {
  const planned = heightOf(cell?.plannedMinutes ?? 0)
  const done = heightOf(cell?.doneMinutes ?? 0)
  const missed = cell !== null && cell.doneMinutes === 0 && cell.plannedMinutes > 0 && !toCome
  return (
    <svg viewBox={`0 0 ${WIDTH} 48`} width={WIDTH} height="48" aria-hidden="true" className="block">
      <path d={`M0 ${WIRE}H${WIDTH}`} className="stroke-wire" strokeWidth="1.5" />
      {done > 0 && <rect x="16" y={WIRE - done} width="16" height={done} className="fill-frame" />}
      {missed && (
        <rect
          x="16"
          y={WIRE - planned}
          width="16"
          height={planned}
          className="fill-none stroke-ink"
          strokeWidth="1.5"
        />
      )}
      {planned > 0 && (
        <path
          d={`M9 ${WIRE - planned}H39`}
          className="stroke-ink"
          strokeWidth="2.5"
          strokeDasharray={toCome ? '2.5 4' : undefined}
        />
      )}
      {(cell?.late ?? 0) > 0 && <path d={`M24 ${WIRE + 2}V${WIRE + 7}`} className="stroke-ink" strokeWidth="2.5" />}
    </svg>
  )
}

/** What the bars mean; each sample is drawn like the bars themselves. */
export function BarLegend({ words }: { readonly words: readonly [string, string, string, string, string] }) {
  const [coached, plan, coming, missed, late] = words
  const samples = [
    [coached, <rect key="done" x="4" y="2" width="8" height="14" className="fill-frame" />],
    [plan, <path key="plan" d="M0 6H16" className="stroke-ink" strokeWidth="2.5" />],
    [coming, <path key="coming" d="M0 6H16" className="stroke-ink" strokeWidth="2.5" strokeDasharray="2.5 4" />],
    [
      missed,
      <rect key="missed" x="4" y="2" width="8" height="14" className="fill-none stroke-ink" strokeWidth="1.5" />,
    ],
    [late, <path key="late" d="M8 8V14" className="stroke-ink" strokeWidth="2.5" />],
  ] as const
  return (
    <ul className="flex flex-wrap gap-x-6 gap-y-1 text-small text-ink-soft">
      {samples.map(([word, mark]) => (
        <li key={word} className="flex items-center gap-2">
          <svg viewBox="0 0 16 18" width="16" height="18" aria-hidden="true">
            {mark}
          </svg>
          {word}
        </li>
      ))}
    </ul>
  )
}

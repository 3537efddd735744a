import type { PressureWords } from './pressure-message'

/** Between two numbers, in the line's own units. */
const APART = 40
const RADIUS = 11
const MIDDLE = 16

type PressureLineProps = Pick<PressureWords, 'worksAgainst' | 'tried' | 'isStopped'>

/**
 * One shoot from no opponent to the most that were tried: thick as far as the pattern gets out, cut where it breaks, dotted
 * beyond. The sentence under it says the same, so it is no picture to whoever listens.
 */
export function PressureLine({ worksAgainst, tried, isStopped }: PressureLineProps) {
  const counts = Array.from({ length: tried + 1 }, (_, count) => count)
  const xOf = (count: number) => RADIUS + 2 + count * APART
  const cutAt = xOf(worksAgainst) + APART / 2 + 1
  return (
    <svg viewBox={`0 0 ${xOf(tried) + RADIUS + 2} ${MIDDLE * 2}`} aria-hidden="true" className="pressure-line">
      <path className="pressure-line-far" d={`M${xOf(0)} ${MIDDLE}H${xOf(tried)}`} />
      <path className="pressure-line-out" d={`M${xOf(0)} ${MIDDLE}H${isStopped ? cutAt - 5 : xOf(tried)}`} />
      {isStopped && (
        <path className="pressure-line-cut" d={`M${cutAt - 5} ${MIDDLE + 8}l5 -16M${cutAt + 1} ${MIDDLE + 8}l5 -16`} />
      )}
      {counts.map((count) => (
        <g key={count} className={count <= worksAgainst ? 'pressure-count' : 'pressure-count pressure-count-far'}>
          <circle cx={xOf(count)} cy={MIDDLE} r={RADIUS} />
          <text x={xOf(count)} y={MIDDLE + 5}>
            {count}
          </text>
        </g>
      ))}
    </svg>
  )
}

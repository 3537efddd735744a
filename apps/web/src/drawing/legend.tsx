import type { ReactNode } from 'react'
import { drawingMessage } from '../messages/drawing'
import type { Shaft } from './arrow'
import { SAMPLE_SIZES as SIZES } from './mark-sizes'
import { BagMark, BallMark, BibMark, ConeMark, GateMark, OpponentMark, OwnMark, PoleMark, SmallGoalMark } from './marks'
import { Trail } from './trail'

/** Everything a drawing may hold, in the order a legend names it. */
export const LEGEND_ITEMS = [
  'own',
  'ghost',
  'opponent',
  'ball',
  'pass',
  'air',
  'run',
  'carry',
  'shot',
  'walk',
  'bag',
  'pole',
  'cone',
  'bib',
  'smallGoal',
  'gate',
  'area',
] as const
export type LegendItem = (typeof LEGEND_ITEMS)[number]

const AT = { x: 0, y: 0 }
const SHAFT: Shaft = { start: { x: -2.6, y: 0 }, control: null, tip: { x: 2.6, y: 0 } }
const BOWED: Shaft = { start: { x: -2.6, y: 0.7 }, control: { x: 0, y: -1.8 }, tip: { x: 2.6, y: 0.7 } }

/** Half the width of each sample, in metres. */
const SAMPLES = {
  own: [1.6, <OwnMark key="own" at={AT} sizes={SIZES} position="CM" />],
  ghost: [1.6, <OwnMark key="ghost" at={AT} sizes={SIZES} position="CM" state="ghost" />],
  opponent: [1.2, <OpponentMark key="opponent" at={AT} sizes={SIZES} />],
  ball: [0.7, <BallMark key="ball" at={AT} sizes={SIZES} />],
  pass: [2.7, <Trail key="pass" kind="pass" shaft={SHAFT} state="now" sizes={SIZES} />],
  air: [2.7, <Trail key="air" kind="air" shaft={BOWED} state="now" sizes={SIZES} />],
  run: [2.7, <Trail key="run" kind="run" shaft={SHAFT} state="now" sizes={SIZES} />],
  carry: [2.7, <Trail key="carry" kind="carry" shaft={SHAFT} state="now" sizes={SIZES} />],
  shot: [2.7, <Trail key="shot" kind="shot" shaft={SHAFT} state="now" sizes={SIZES} />],
  walk: [
    2.7,
    <path
      key="walk"
      className="drawing-walk"
      d="M-2.6 0H2.6M-2.4 -.4v.8M-1.6 -.4v.8M-.8 -.4v.8M0 -.4v.8M.8 -.4v.8M1.6 -.8v1.6M2.4 -.4v.8"
    />,
  ],
  bag: [1.2, <BagMark key="bag" at={{ x: 0, y: 0.3 }} sizes={SIZES} />],
  pole: [0.5, <PoleMark key="pole" at={AT} sizes={SIZES} />],
  cone: [1, <ConeMark key="cone" at={AT} sizes={SIZES} />],
  bib: [0.9, <BibMark key="bib" at={AT} sizes={SIZES} />],
  smallGoal: [1.2, <SmallGoalMark key="smallGoal" at={{ x: 0, y: 0.6 }} width={2} mouth="down" />],
  gate: [2.1, <GateMark key="gate" at={AT} sizes={SIZES} width={2.4} />],
  area: [1.4, <rect key="area" className="drawing-area" x="-1.2" y="-0.9" width="2.4" height="1.8" />],
} as const satisfies Record<LegendItem, readonly [number, ReactNode]>

type LegendProps = { readonly items: readonly LegendItem[]; readonly children?: ReactNode }

/** The marks a drawing uses, and only those. */
export function Legend({ items, children }: LegendProps) {
  const used = LEGEND_ITEMS.filter((item) => items.includes(item))
  if (used.length === 0 && !children) return null
  return (
    <ul
      aria-label={drawingMessage('legend')}
      className="drawing-legend mt-2 flex flex-wrap items-center gap-x-4 gap-y-1 text-small text-ink-soft desk:text-fine"
    >
      {used.map((item) => (
        <LegendSample key={item} half={SAMPLES[item][0]} words={drawingMessage(item)}>
          {SAMPLES[item][1]}
        </LegendSample>
      ))}
      {children}
    </ul>
  )
}

type LegendSampleProps = {
  /** Half the width of the sample, in metres. */
  readonly half: number
  readonly words: string
  readonly children: ReactNode
}

/** One mark and what it means. */
export function LegendSample({ half, words, children }: LegendSampleProps) {
  return (
    <li className="inline-flex items-center gap-1.5 whitespace-nowrap">
      <svg viewBox={`${-half} -1.5 ${half * 2} 3`} aria-hidden="true" className="drawing">
        {children}
      </svg>
      {words}
    </li>
  )
}

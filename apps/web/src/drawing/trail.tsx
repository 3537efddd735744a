import { unreachable } from '@espalier/domain/quantities'
import { arrivalOf, doublePath, filledHead, openHead, type Shaft, shaftPath } from './arrow'
import { type MarkSizes, STROKES } from './mark-sizes'
import { attribute, offset } from './paper-point'
import { WAVE_AMPLITUDE, wavePath } from './wave'

/** pass: solid; air: solid and bowed; run: dashed with an open head; carry: a wave; shot: two lines. */
export type TrailKind = 'pass' | 'air' | 'run' | 'carry' | 'shot'

type TrailProps = {
  readonly kind: TrailKind
  readonly shaft: Shaft
  /** Past is thin and faint: not what is being read. */
  readonly state: 'now' | 'past'
  readonly sizes: MarkSizes
  /** One way of several: finely dashed, whatever its kind. */
  readonly isAnswer?: boolean
}

const SHOT_LINES_APART = 0.52

/** The way of a ball or of a body. The ball has a filled head, a body an open one. */
export function Trail({ kind, shaft, state, sizes, isAnswer = false }: TrailProps) {
  const head = sizes.head * (state === 'past' ? STROKES.past.head : 1)
  const stroke = attribute(STROKES[kind === 'run' ? 'run' : 'ball'][state] * sizes.unit)
  const direction = arrivalOf(shaft)
  return (
    <g className={state === 'past' ? 'drawing-trail drawing-past' : 'drawing-trail'} data-trail={kind}>
      <path
        d={bodyPath(kind, shaft, state, head, sizes.unit)}
        strokeWidth={stroke}
        strokeDasharray={isAnswer ? dashes(sizes.unit * 0.45) : kind === 'run' ? dashes(sizes.unit) : undefined}
      />
      {kind === 'run' ? (
        <path d={openHead(shaft.tip, direction, head)} strokeWidth={stroke} strokeLinecap="round" />
      ) : (
        <path className="drawing-head" d={filledHead(shaft.tip, direction, head)} />
      )}
    </g>
  )
}

function bodyPath(kind: TrailKind, shaft: Shaft, state: 'now' | 'past', head: number, unit: number): string {
  switch (kind) {
    case 'pass':
    case 'air':
      return shaftPath(shaft, head * 0.6)
    case 'run':
      return shaftPath(shaft, 0)
    case 'carry':
      return wavePath(
        shaft.start,
        offset(shaft.tip, arrivalOf(shaft), -head * 0.6),
        WAVE_AMPLITUDE * (state === 'past' ? STROKES.past.wave : 1) * unit,
        unit,
      )
    case 'shot':
      return doublePath(shaft, SHOT_LINES_APART * unit, head * 0.7)
    default:
      return unreachable(kind)
  }
}

/** The pale wash under what is being read. */
export function Wash({ shaft, sizes }: { readonly shaft: Shaft; readonly sizes: MarkSizes }) {
  return <path className="drawing-wash" strokeWidth={attribute(STROKES.wash * sizes.unit)} d={shaftPath(shaft, 0)} />
}

function dashes(unit: number): string {
  return `${attribute(0.95 * unit)} ${attribute(0.6 * unit)}`
}

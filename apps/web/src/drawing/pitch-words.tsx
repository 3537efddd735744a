import type { PitchMarking } from '@espalier/domain/pitch'
import { drawingMessage } from '../messages/drawing'
import type { MarkSizes } from './mark-sizes'
import { attribute } from './paper-point'
import type { DrawingFrame } from './viewport'

const TICK_METRES = 5
const LABEL_METRES = 10

/** Metres from the own goal line, up the left side. */
export function Scale({ frame, sizes }: { readonly frame: DrawingFrame; readonly sizes: MarkSizes }) {
  const x = frame.left - 1.2
  const nearest = Math.ceil(-frame.bottom / TICK_METRES) * TICK_METRES
  const count = Math.floor((-frame.top - nearest) / TICK_METRES) + 1
  const ticks = Array.from({ length: Math.max(0, count) }, (_, index) => nearest + index * TICK_METRES)
  const highest = ticks.filter((metres) => metres % LABEL_METRES === 0).at(-1)
  return (
    <g>
      <path
        className="drawing-scale"
        d={`M${attribute(x)} ${attribute(frame.bottom)}V${attribute(frame.top)}${ticks
          .map((metres) => `M${attribute(x)} ${-metres}h${metres % LABEL_METRES === 0 ? -0.8 : -0.4}`)
          .join('')}`}
      />
      {ticks
        .filter((metres) => metres % LABEL_METRES === 0)
        .map((metres) => (
          <text
            key={metres}
            className="drawing-quiet"
            textAnchor="end"
            fontSize={attribute(sizes.label)}
            x={attribute(x - 1.1)}
            y={attribute(-metres + sizes.label * 0.35)}
          >
            {metres === highest ? drawingMessage('metres', { metres }) : metres}
          </text>
        ))}
    </g>
  )
}

const NAMED = { halfway: 'halfway', 'build-out-line': 'buildOutLine' } as const

type LandmarkNamesProps = {
  readonly frame: DrawingFrame
  readonly markings: readonly PitchMarking[]
  readonly sizes: MarkSizes
}

/** The lines that speech needs most, named at their right end. */
export function LandmarkNames({ frame, markings, sizes }: LandmarkNamesProps) {
  return markings.map((marking) => {
    if (marking.kind !== 'line' || (marking.marking !== 'halfway' && marking.marking !== 'build-out-line')) return null
    const y = -marking.from.x
    if (y < frame.top || y > frame.bottom) return null
    return (
      <text
        key={`${marking.marking} ${y}`}
        className="drawing-landmark"
        fontSize={attribute(sizes.label)}
        x={attribute(frame.right + 0.9)}
        y={attribute(y + sizes.label * 0.35)}
      >
        {drawingMessage(NAMED[marking.marking])}
      </text>
    )
  })
}

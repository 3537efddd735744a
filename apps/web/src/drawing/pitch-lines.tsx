import type { Rectangle } from '@espalier/domain/geometry'
import type { PitchMarking } from '@espalier/domain/pitch'
import { unreachable } from '@espalier/domain/quantities'
import { attribute, pathPlace, toPaper } from './paper-point'

/** How far a goal's net stands behind its line, in metres; for the eye only. */
const GOAL_DEPTH = 1.5

/** The lines and goals of a space as they were found there: painted is drawn through, flags are drawn dashed. */
export function PitchLines({ markings }: { readonly markings: readonly PitchMarking[] }) {
  return (
    <g>
      {markings.map((marking, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the list is made anew for every drawing and never reordered
        <MarkingLine key={index} marking={marking} />
      ))}
    </g>
  )
}

function MarkingLine({ marking }: { readonly marking: PitchMarking }) {
  const className = marking.finding === 'none' ? 'drawing-line drawing-edge' : 'drawing-line'
  const dashed = marking.finding === 'flags' || marking.marking === 'build-out-line' ? '0.5 0.42' : undefined
  switch (marking.kind) {
    case 'line':
      return (
        <path
          className={className}
          strokeDasharray={dashed}
          d={`M${pathPlace(toPaper(marking.from))}L${pathPlace(toPaper(marking.to))}`}
        />
      )
    case 'rect':
      return <rect className={className} strokeDasharray={dashed} {...rectangleAttributes(marking.area)} />
    case 'arc':
      return <path className={className} strokeDasharray={dashed} d={arcPath(marking)} />
    case 'circle': {
      const centre = toPaper(marking.centre)
      return (
        <circle
          className={className}
          strokeDasharray={dashed}
          cx={attribute(centre.x)}
          cy={attribute(centre.y)}
          r={attribute(marking.radius)}
        />
      )
    }
    case 'dot': {
      const at = toPaper(marking.at)
      return <circle className="drawing-dot" cx={attribute(at.x)} cy={attribute(at.y)} r="0.2" />
    }
    case 'goal': {
      const left = toPaper(marking.left)
      const right = toPaper(marking.right)
      const back = left.y + (marking.end === 'own' ? GOAL_DEPTH : -GOAL_DEPTH)
      return (
        <path
          className="drawing-goal"
          d={`M${pathPlace(left)}V${attribute(back)}H${attribute(right.x)}V${attribute(right.y)}`}
        />
      )
    }
    default:
      return unreachable(marking)
  }
}

/** A rectangle of the pitch as attributes of a `rect` on the page. */
export function rectangleAttributes(area: Rectangle) {
  return {
    x: attribute(area.left),
    y: attribute(-area.far),
    width: attribute(area.right - area.left),
    height: attribute(area.far - area.near),
  }
}

/** Degrees turn from up the pitch to the right: the same way round on the page. */
export function arcPath(arc: Extract<PitchMarking, { readonly kind: 'arc' }>): string {
  const centre = toPaper(arc.centre)
  const placeAt = (degrees: number) => {
    const radians = (degrees * Math.PI) / 180
    return { x: centre.x + arc.radius * Math.sin(radians), y: centre.y - arc.radius * Math.cos(radians) }
  }
  const large = Math.abs(arc.toDegrees - arc.fromDegrees) > 180 ? 1 : 0
  const radius = attribute(arc.radius)
  return `M${pathPlace(placeAt(arc.fromDegrees))}A${radius} ${radius} 0 ${large} 1 ${pathPlace(placeAt(arc.toDegrees))}`
}

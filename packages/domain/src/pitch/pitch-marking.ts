import type { Point, Rectangle } from '../geometry'
import type { Metres } from '../quantities'
import type { Finding, Marking } from './space'

/** What a drawn line is part of. */
export type MarkingClass = Marking | 'penalty-arc' | 'corner-arc' | 'centre-mark' | 'goal'

type Common = {
  readonly marking: MarkingClass
  /** Flags are drawn dashed; `none` is only ever the edge of a space without lines. */
  readonly finding: Finding
}

/** One thing to draw, in metres of the pitch frame; arcs turn from `fromDegrees` to `toDegrees`, 0 being up the pitch, growing to the right. */
export type PitchMarking = Common &
  (
    | { readonly kind: 'line'; readonly from: Point; readonly to: Point }
    | { readonly kind: 'rect'; readonly area: Rectangle }
    | {
        readonly kind: 'arc'
        readonly centre: Point
        readonly radius: Metres
        readonly fromDegrees: number
        readonly toDegrees: number
      }
    | { readonly kind: 'circle'; readonly centre: Point; readonly radius: Metres }
    | { readonly kind: 'dot'; readonly at: Point }
    /** The goal stands behind the line between its posts. */
    | {
        readonly kind: 'goal'
        readonly end: 'own' | 'far'
        readonly left: Point
        readonly right: Point
        readonly movable: boolean
      }
  )

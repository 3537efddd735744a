import type { Landmark, Spot } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'

/** A spot written in metres: up the pitch and to the right of a landmark. */
export function spotAt(landmark: Landmark, upMetres = 0, rightMetres = 0): Spot {
  return {
    landmark,
    upMm: millimetres(Math.round(upMetres * 1000)),
    rightMm: millimetres(Math.round(rightMetres * 1000)),
  }
}

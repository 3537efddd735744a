import type { Rectangle } from '@espalier/domain/geometry'
import { markSizes } from './mark-sizes'
import { attribute } from './paper-point'

/** The page's part of a drawing: what is shown of the pitch, in page metres, and the margins for words round it. */
export type DrawingFrame = {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
  readonly viewBox: string
}

/** Room round the space for rings on the line and goals behind it, in metres. */
const MARGIN = 2.2
/** Room for the scale on the left and the names of lines on the right. */
const SCALE_ROOM = 3.4
const NAMES_ROOM = 7.6

export function drawingFrame(shown: Rectangle, annotated: boolean): DrawingFrame {
  const left = shown.left
  const right = shown.right
  const top = -shown.far
  const bottom = -shown.near
  // The room for words grows with the words, as the marks do.
  const unit = markSizes('desk', shown).unit
  const marginLeft = annotated ? MARGIN + SCALE_ROOM * unit : MARGIN
  const marginRight = annotated ? MARGIN + NAMES_ROOM * unit : MARGIN
  const viewBox = [left - marginLeft, top - MARGIN, right - left + marginLeft + marginRight, bottom - top + 2 * MARGIN]
    .map(attribute)
    .join(' ')
  return { left, right, top, bottom, viewBox }
}

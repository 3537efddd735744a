import type { FormatChoices } from '@espalier/domain/formats'
import { cornersOf, point, rectangleAround } from '@espalier/domain/geometry'
import { type Space, spaceRectangle } from '@espalier/domain/pitch'
import { metresOf } from '@espalier/domain/quantities'
import type { Area } from '@espalier/domain/session'
import { drawingMessage } from '../messages/drawing'
import { type MarkSizes, type Medium, markSizes, STROKES } from './mark-sizes'
import { ConeMark } from './marks'
import { attribute, toPaper } from './paper-point'
import { PitchDrawing } from './pitch-drawing'
import { rectangleAttributes } from './pitch-lines'

type AreasDrawingProps = {
  readonly title: string
  readonly space: Space
  readonly areas: readonly Area[]
  readonly medium: Medium
  readonly choices?: FormatChoices | undefined
  readonly legend?: boolean
}

/** An activity's areas on tonight's space, each with its measures and its cones. */
export function AreasDrawing({ title, space, areas, medium, choices, legend = true }: AreasDrawingProps) {
  return (
    <PitchDrawing
      space={space}
      medium={medium}
      choices={choices}
      title={drawingMessage('areasTitle', { title })}
      words={areas.map(areaInWords)}
      legend={legend && areas.length > 0 ? ['area', 'cone'] : []}
    >
      {areas.map((area, index) => (
        <AreaOutline
          key={`${area.upMm} ${area.rightMm}`}
          area={area}
          number={areas.length > 1 ? index + 1 : null}
          sizes={markSizes(medium, spaceRectangle(space))}
        />
      ))}
    </PitchDrawing>
  )
}

type AreaOutlineProps = { readonly area: Area; readonly number: number | null; readonly sizes: MarkSizes }

function AreaOutline({ area, number, sizes }: AreaOutlineProps) {
  const rectangle = rectangleOf(area)
  const measures = { width: metresText(area.widthMm), length: metresText(area.lengthMm) }
  return (
    <g>
      <rect className="drawing-area" {...rectangleAttributes(rectangle)} />
      {cornersOf(rectangle).map((corner) => (
        <ConeMark key={`${corner.x} ${corner.y}`} at={toPaper(corner)} sizes={sizes} />
      ))}
      <text
        className="drawing-halo"
        strokeWidth={attribute(STROKES.halo * sizes.unit)}
        textAnchor="middle"
        fontSize={attribute(sizes.label)}
        x={attribute((rectangle.left + rectangle.right) / 2)}
        y={attribute(-rectangle.near - sizes.label * 0.7)}
      >
        {number === null ? drawingMessage('sides', measures) : drawingMessage('areaNumbered', { number, ...measures })}
      </text>
    </g>
  )
}

function rectangleOf(area: Area) {
  const middle = point(metresOf(area.upMm), metresOf(area.rightMm))
  return rectangleAround(middle, metresOf(area.lengthMm), metresOf(area.widthMm))
}

function areaInWords(area: Area, index: number): string {
  const aside =
    area.rightMm === 0
      ? drawingMessage('asideNone')
      : drawingMessage(area.rightMm > 0 ? 'asideRight' : 'asideLeft', { metres: metresText(Math.abs(area.rightMm)) })
  return drawingMessage('areaInWords', {
    number: index + 1,
    width: metresText(area.widthMm),
    length: metresText(area.lengthMm),
    up: metresText(area.upMm),
    aside,
  })
}

/** Metres as people say them: whole where they are whole, else to the decimetre. */
function metresText(lengthMm: number): string {
  return String(Math.round(lengthMm / 100) / 10)
}

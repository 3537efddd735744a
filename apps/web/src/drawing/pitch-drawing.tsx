import type { FormatChoices } from '@espalier/domain/formats'
import type { Rectangle } from '@espalier/domain/geometry'
import { type PitchMarking, pitchMarkings, type Space, spaceRectangle } from '@espalier/domain/pitch'
import { type ComponentProps, type ReactNode, useId } from 'react'
import { drawingMessage } from '../messages/drawing'
import { Legend, type LegendItem } from './legend'
import { type MarkSizes, type Medium, markSizes } from './mark-sizes'
import { PitchLines } from './pitch-lines'
import { LandmarkNames, Scale } from './pitch-words'
import { type DrawingFrame, drawingFrame } from './viewport'

export type PitchDrawingProps = {
  readonly space: Space
  readonly medium: Medium
  /** What the drawing shows, as its name. */
  readonly title: string
  /** What a listener should know at once; the whole of it stands in `words`. */
  readonly description?: string | undefined
  /** The drawing as a list of sentences; left out only where the page says the same beside it. */
  readonly words?: readonly string[] | undefined
  readonly legend?: readonly LegendItem[]
  /** Samples of marks that only this page draws. */
  readonly legendMore?: ReactNode
  /** A club's settings that move a line. */
  readonly choices?: FormatChoices | undefined
  /** The part of the pitch to show; the whole space where it is left out. */
  readonly crop?: Rectangle | undefined
  /** Metres up the left side and the names of lines on the right: for the desk. */
  readonly annotated?: boolean
  /** For drawings that take part in editing: handlers, a reference, another role than a picture's. */
  readonly svg?: Omit<ComponentProps<'svg'>, 'viewBox' | 'style' | 'children'>
  readonly children?: ReactNode
}

/** A space with its lines as they were found, everything in metres, the team attacking up the page. */
export function PitchDrawing(props: PitchDrawingProps) {
  const { space, medium, title, description, words, legend = [], choices, annotated = false, svg } = props
  const id = useId()
  const markings = pitchMarkings(space, choices)
  const shown = props.crop ?? spaceRectangle(space)
  const frame = drawingFrame(shown, annotated)
  const sizes = markSizes(medium, shown)
  return (
    <figure>
      <svg
        role="img"
        aria-labelledby={description === undefined ? `${id}-title` : `${id}-title ${id}-description`}
        {...svg}
        viewBox={frame.viewBox}
        className="drawing overflow-hidden"
      >
        <title id={`${id}-title`}>{title}</title>
        {description !== undefined && <desc id={`${id}-description`}>{description}</desc>}
        <PitchLines markings={markings} />
        {annotated && <Annotations frame={frame} markings={markings} sizes={sizes} />}
        {props.children}
      </svg>
      <Legend items={legend}>{props.legendMore}</Legend>
      {words !== undefined && <DrawingWords words={words} />}
    </figure>
  )
}

type AnnotationsProps = {
  readonly frame: DrawingFrame
  readonly markings: readonly PitchMarking[]
  readonly sizes: MarkSizes
}

function Annotations({ frame, markings, sizes }: AnnotationsProps) {
  return (
    <g>
      <Scale frame={frame} sizes={sizes} />
      <LandmarkNames frame={frame} markings={markings} sizes={sizes} />
    </g>
  )
}

/** The same content without the picture: for listeners, and for whoever prefers reading. */
function DrawingWords({ words }: { readonly words: readonly string[] }) {
  return (
    <details className="mt-1 text-small">
      <summary className="inline-flex min-h-target items-center text-ink-soft underline underline-offset-[0.2em]">
        {drawingMessage('inWords')}
      </summary>
      <ol className="flex max-w-text flex-col gap-1">
        {words.map((sentence, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences may repeat and are never reordered
          <li key={index}>{sentence}</li>
        ))}
      </ol>
    </details>
  )
}

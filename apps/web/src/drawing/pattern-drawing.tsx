import type { FormatChoices } from '@espalier/domain/formats'
import { type Rectangle, rectangle } from '@espalier/domain/geometry'
import { type PatternDocument, type Position, sayPlace, scriptSentences } from '@espalier/domain/pattern'
import { type Space, spaceRectangle } from '@espalier/domain/pitch'
import type { ReactNode } from 'react'
import { drawingMessage } from '../messages/drawing'
import type { LegendItem } from './legend'
import { type MarkSizes, type Medium, markSizes } from './mark-sizes'
import { PatternLayers, type PatternLayersProps, type PatternLetter } from './pattern-layers'
import { type PatternScene, patternScene } from './pattern-scene'
import { patternRings } from './pattern-shafts'
import { PitchDrawing } from './pitch-drawing'

export type PatternDrawingProps = {
  readonly document: PatternDocument
  readonly space: Space
  readonly medium: Medium
  /** The step being read, from 0; left out where all are drawn alike. */
  readonly step?: number | undefined
  readonly letters?: readonly PatternLetter[]
  readonly names?: Readonly<Record<Position, string>>
  readonly choices?: FormatChoices | undefined
  /** Only the metres that the step uses, over the full width: for phones. */
  readonly cropped?: boolean
  readonly annotated?: boolean
  readonly legend?: boolean
  /** False only where the page itself lists the sentences beside the drawing. */
  readonly inWords?: boolean
  /** More to draw above the pattern, where a page has more to show than its steps. */
  readonly above?: ((drawn: DrawnPattern) => ReactNode) | undefined
  /** Samples of the marks drawn above, at the end of the legend. */
  readonly aboveLegend?: ReactNode
}

/** A pattern as it was laid out for a drawing. */
export type DrawnPattern = Required<Pick<PatternLayersProps, 'scene' | 'reading' | 'sizes' | 'letters'>>

/** A pattern on a space; the same drawing on screen and paper. */
export function PatternDrawing(props: PatternDrawingProps) {
  const { document, space, medium, step, choices } = props
  const scene = patternScene(document, space, choices)
  const reading = step === undefined || scene.steps[step] === undefined ? null : step
  const script = scriptSentences(document)
  const crop = props.cropped === true && reading !== null ? stepCrop(scene, reading, space) : undefined
  const sizes = markSizes(medium, crop ?? spaceRectangle(space))
  const letters = props.letters ?? []
  const now = reading === null ? undefined : script[reading]
  return (
    <PitchDrawing
      space={space}
      medium={medium}
      choices={choices}
      annotated={props.annotated ?? false}
      crop={crop}
      title={document.title}
      description={
        now === undefined
          ? script.map((each) => `${each.number}. ${each.text}`).join(' ')
          : `${now.number}. ${now.fullText}`
      }
      words={props.inWords === false ? undefined : patternInWords(document, scene)}
      legend={props.legend === false ? [] : patternLegend(scene, reading, sizes)}
      legendMore={props.aboveLegend}
    >
      <PatternLayers scene={scene} reading={reading} sizes={sizes} letters={letters} names={props.names ?? {}} />
      {props.above?.({ scene, reading, sizes, letters })}
    </PitchDrawing>
  )
}

/** Everything the drawing shows, as sentences: who starts where, what stands in the way, then the script. */
export function patternInWords(document: PatternDocument, scene?: PatternScene): readonly string[] {
  const cut = scene?.cut ?? null
  return [
    ...document.positions.map(({ position, spot }) => drawingMessage('standsAt', { position, place: sayPlace(spot) })),
    ...document.obstacles.map(({ kind, spot }) =>
      drawingMessage('obstacleAt', { kind: drawingMessage(kind), place: sayPlace(spot) }),
    ),
    ...scriptSentences(document).map((step) => `${step.number}. ${step.fullText}`),
    ...(cut === null ? [] : [drawingMessage('cutAt', { number: cut.stepIndex + 1 })]),
  ]
}

/** The marks this drawing uses. */
export function patternLegend(scene: PatternScene, reading: number | null, sizes: MarkSizes): readonly LegendItem[] {
  const rings = patternRings(scene, reading, sizes)
  const items = new Set<LegendItem>()
  if (rings.some((ring) => ring.state !== 'ghost')) items.add('own')
  if (rings.some((ring) => ring.state === 'ghost')) items.add('ghost')
  for (const step of scene.steps) {
    if (step.ball !== null) items.add('ball').add(step.ball.kind)
    if (step.runs.length > 0) items.add('run')
  }
  if (scene.cut !== null) items.add('gate')
  for (const obstacle of scene.obstacles) items.add(obstacle.kind)
  for (const target of scene.targets) {
    if (target.kind === 'small-goal') items.add('smallGoal')
    if (target.kind === 'gate') items.add('gate')
  }
  return [...items]
}

/** Metres shown beyond what a step uses. */
const CROP_MARGIN = 5
/** A crop lower than this would be a strip. */
const CROP_LEAST = 18

/** The part of the pitch a step uses, over the whole width. */
export function stepCrop(scene: PatternScene, reading: number, space: Space): Rectangle {
  const whole = spaceRectangle(space)
  const step = scene.steps[reading]
  const used = [step?.ball?.from, step?.ball?.to, ...(step?.runs.flatMap((run) => [run.from, run.to]) ?? [])]
  const ups = used.flatMap((place) => (place === undefined ? [] : [-place.y]))
  if (ups.length === 0) return whole
  const near = Math.min(...ups) - CROP_MARGIN
  const far = Math.max(...ups) + CROP_MARGIN
  const spare = Math.max(0, CROP_LEAST - (far - near)) / 2
  return rectangle(Math.max(whole.near, near - spare), Math.min(whole.far, far + spare), whole.left, whole.right)
}

import type { LookCover } from '@espalier/domain/check'
import type { FormatChoices } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace, spaceRectangle } from '@espalier/domain/pitch'
import { LegendSample } from '../../drawing/legend'
import { type MarkSizes, type Medium, markSizes, STROKES } from '../../drawing/mark-sizes'
import { BallMark, OwnMark } from '../../drawing/marks'
import { attribute, gapBetween, type PaperPoint } from '../../drawing/paper-point'
import { patternScene } from '../../drawing/pattern-scene'
import { PitchDrawing } from '../../drawing/pitch-drawing'
import { patternsMessage } from '../../messages/patterns'
import { coverMapInWords, wayMark } from './cover-map-words'
import { borderPath, coverCells, coverRegions, hatchPath, letterCells } from './cover-regions'
import { stepNumber } from './cover-words'

type CoverMapProps = {
  readonly document: PatternDocument
  readonly choices: FormatChoices
  /** Null while it is worked out: the pitch is there already, so that nothing moves when letters come. */
  readonly cover: LookCover | null
  readonly medium: Medium
}

/** Which answer is best by where one X stands, as letters on the pitch; holes are hatched. */
export function CoverMap({ document, choices, cover, medium }: CoverMapProps) {
  const space = nominalSpace(document.formatId)
  const sizes = markSizes(medium, spaceRectangle(space))
  const scene = patternScene(document, space, choices)
  const leaves = cover === null ? 0 : stepNumber(document, cover.stepId) - 1
  const standing = cover === null ? [] : [...(scene.places[leaves] ?? [])]
  return (
    <PitchDrawing
      space={space}
      medium={medium}
      choices={choices}
      title={patternsMessage('mapTitle')}
      description={patternsMessage('mapDescription')}
      words={cover === null ? [] : coverMapInWords(document, cover, space)}
      legendMore={cover !== null && <MapLegend document={document} cover={cover} />}
    >
      {cover !== null && (
        <MapCells document={document} cover={cover} sizes={sizes} taken={standing.map(([, at]) => at)} />
      )}
      {standing.map(([position, at]) => (
        <OwnMark
          key={position}
          at={at}
          sizes={sizes}
          position={position}
          state={position === cover?.by ? 'acting' : 'standing'}
        />
      ))}
      {standing
        .filter(([position]) => position === cover?.by)
        .map(([position, at]) => (
          <BallMark key={position} at={{ x: at.x, y: at.y - sizes.ringRadius }} sizes={sizes} />
        ))}
    </PitchDrawing>
  )
}

type MapCellsProps = {
  readonly document: PatternDocument
  readonly cover: LookCover
  readonly sizes: MarkSizes
  /** Where rings stand, which no letter may touch. */
  readonly taken: readonly PaperPoint[]
}

/** Metres between letters on the pitch the marks were chosen on. */
const LETTERS_APART = 3

function MapCells({ document, cover, sizes, taken }: MapCellsProps) {
  const cells = coverCells(cover)
  const size = sizes.number * 1.1
  const every = Math.max(1, Math.round(LETTERS_APART * sizes.unit))
  const isFree = (at: PaperPoint) => taken.every((ring) => gapBetween(ring, at) > sizes.ringRadius + size * 0.5)
  const letters = coverRegions(cells).flatMap((region) => {
    const way = region.way === null ? undefined : cover.ways[region.way]
    return way === undefined ? [] : letterCells(region, every, isFree).map(({ at }) => ({ at, way }))
  })
  return (
    <g>
      <path className="drawing-hatch" strokeWidth={attribute(0.14 * sizes.unit)} d={hatchPath(cells)} />
      <path className="drawing-border" strokeWidth={attribute(0.1 * sizes.unit)} d={borderPath(cells)} />
      {letters.map(({ at, way }) => (
        <text
          key={`${at.x} ${at.y}`}
          className={way.letter === null ? 'drawing-place drawing-place-drawn' : 'drawing-place'}
          fontSize={attribute(size)}
          strokeWidth={attribute(STROKES.halo * 0.6 * sizes.unit)}
          x={attribute(at.x)}
          y={attribute(at.y + size * 0.35)}
        >
          {wayMark(document, cover, way)}
        </text>
      ))}
    </g>
  )
}

function MapLegend({ document, cover }: { readonly document: PatternDocument; readonly cover: LookCover }) {
  const best = new Set(cover.places.map(({ way }) => way))
  return (
    <>
      {cover.ways.map((way, index) => {
        if (!best.has(index)) return null
        const mark = wayMark(document, cover, way)
        const words =
          way.letter === null
            ? patternsMessage('mapDrawn', { number: mark })
            : patternsMessage('mapAnswer', { letter: way.letter })
        return (
          <LegendSample key={mark} half={1} words={words}>
            <text
              className={way.letter === null ? 'drawing-place drawing-place-drawn' : 'drawing-place'}
              fontSize="2.2"
              x="0"
              y="0.8"
            >
              {mark}
            </text>
          </LegendSample>
        )
      })}
      {best.has(null) && (
        <LegendSample half={1.5} words={patternsMessage('mapHole')}>
          <path className="drawing-hatch" strokeWidth="0.2" d="M-1.5 0.5l2 -2M-1.5 1.5l3 -3M-0.5 1.5l2 -2" />
        </LegendSample>
      )}
    </>
  )
}

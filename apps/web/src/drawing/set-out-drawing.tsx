import type { FormatChoices } from '@espalier/domain/formats'
import { type Rectangle, rectangle } from '@espalier/domain/geometry'
import { type Space, spaceRectangle } from '@espalier/domain/pitch'
import type { EquipmentKind, SetOutStop } from '@espalier/domain/session'
import { drawingMessage } from '../messages/drawing'
import { linePath } from './arrow'
import { placeAround, type Taken } from './label-place'
import type { LegendItem } from './legend'
import { type MarkSizes, type Medium, markSizes } from './mark-sizes'
import { BagMark, BallMark, BibMark, ConeMark, PoleMark, SmallGoalMark } from './marks'
import { along, attribute, gapBetween, type PaperPoint, toPaperMm } from './paper-point'
import { PitchDrawing } from './pitch-drawing'
import { walkPath } from './walk-ticks'

type SetOutDrawingProps = {
  readonly space: Space
  readonly stops: readonly SetOutStop[]
  readonly medium: Medium
  /** The stop to put out next; what comes before is done. Left out on paper, where none is. */
  readonly current?: number | undefined
  readonly choices?: FormatChoices | undefined
  /** The sentences of the walk, where the page does not list them itself. */
  readonly words?: readonly string[] | undefined
}

type Walked = { readonly stop: SetOutStop; readonly at: PaperPoint; readonly legs: readonly Leg[] }
type Leg = { readonly from: PaperPoint; readonly to: PaperPoint; readonly paces: number }

/** A small goal drawn when its own width is not part of the set-out, in metres; for the eye only. */
const GOAL_WIDTH = 2.4

/** The walk that puts everything out: a line with one tick a pace, stops as square tags. */
export function SetOutDrawing({ space, stops, medium, current, choices, words }: SetOutDrawingProps) {
  const sizes = markSizes(medium, spaceRectangle(space))
  const walked = walkedStops(stops)
  const paces = walked.reduce((sum, { legs }) => sum + legs.reduce((total, leg) => total + leg.paces, 0), 0)
  const here = walked.find(({ stop }) => stop.number === current)
  return (
    <PitchDrawing
      space={space}
      medium={medium}
      choices={choices}
      crop={roomForTags(space, sizes)}
      title={drawingMessage('setOutTitle', { paces })}
      words={words}
      legend={setOutLegend(stops)}
    >
      {here !== undefined && here.legs.length > 0 && <path className="drawing-walk-here" d={hereLine(here.legs)} />}
      {walked.flatMap(({ stop, legs }) =>
        legs.map((leg) => (
          <path
            key={`${stop.number} ${leg.to.x} ${leg.to.y}`}
            className="drawing-walk"
            d={walkPath(leg.from, leg.to, leg.paces)}
          />
        )),
      )}
      {walked.map(({ stop, at }) => (
        <StopItem key={stop.number} stop={stop} at={at} sizes={sizes} />
      ))}
      <StopTags walked={walked} current={current} sizes={sizes} />
    </PitchDrawing>
  )
}

/** Stops on a line have their tags outside it: the drawing shows that much more all round. */
function roomForTags(space: Space, sizes: MarkSizes): Rectangle {
  const { near, far, left, right } = spaceRectangle(space)
  const room = sizes.tag * 0.9
  return rectangle(near - room, far + room, left - room, right + room)
}

/** Legs as counted paces lead; between the last leg's end and the item lies less than half a pace. */
export function walkedStops(stops: readonly SetOutStop[]): readonly Walked[] {
  const [bag] = stops
  let from = bag === undefined ? { x: 0, y: 0 } : toPaperMm(bag.upMm, bag.rightMm)
  return stops.map((stop) => {
    const legs = stop.legs.map(({ upMm, rightMm, paces }): Leg => {
      const leg = { from, to: toPaperMm(upMm, rightMm), paces }
      from = leg.to
      return leg
    })
    return { stop, at: toPaperMm(stop.upMm, stop.rightMm), legs }
  })
}

function hereLine(legs: readonly Leg[]): string {
  return linePath([...legs.slice(0, 1).map((leg) => leg.from), ...legs.map((leg) => leg.to)])
}

type StopItemProps = { readonly stop: SetOutStop; readonly at: PaperPoint; readonly sizes: MarkSizes }

function StopItem({ stop, at, sizes }: StopItemProps) {
  switch (stop.instead ?? stop.item) {
    case 'bag':
      return <BagMark at={at} sizes={sizes} />
    case 'cone':
      return <ConeMark at={at} sizes={sizes} />
    case 'pole':
      return <PoleMark at={at} sizes={sizes} />
    case 'small-goal':
      return <SmallGoalMark at={at} width={GOAL_WIDTH} mouth={stop.mouth ?? 'down'} />
    case 'bib':
      return <BibMark at={at} sizes={sizes} />
    case 'ball':
      return <BallMark at={at} sizes={sizes} />
  }
}

type StopTagsProps = Pick<SetOutDrawingProps, 'current'> & {
  readonly walked: readonly Walked[]
  readonly sizes: MarkSizes
}

/** Square, so that no number is mistaken for a player: filled when done, accented here, outlined ahead. */
function StopTags({ walked, current, sizes }: StopTagsProps) {
  const taken: Taken[] = [
    ...walked.map(({ stop, at }) => ({ at, reach: reachOfItem(stop, sizes) })),
    ...walked.flatMap(({ legs }) => legs.flatMap(reachOfLeg)),
  ]
  return walked.map(({ stop, at }) => {
    if (stop.item === 'bag') return null
    const distance = reachOfItem(stop, sizes) + sizes.tag * 0.8
    const centre = placeAround(at, distance, taken, sizes.tag * 0.85)
    taken.push({ at: centre, reach: sizes.tag * 0.6 })
    const state =
      current === undefined || stop.number > current
        ? ''
        : stop.number === current
          ? ' drawing-tag-here'
          : ' drawing-tag-done'
    return (
      <g key={stop.number} className={`drawing-tag${state}`}>
        <rect
          x={attribute(centre.x - sizes.tag / 2)}
          y={attribute(centre.y - sizes.tag / 2)}
          width={attribute(sizes.tag)}
          height={attribute(sizes.tag)}
          rx="0.2"
        />
        <text x={attribute(centre.x)} y={attribute(centre.y + sizes.tag * 0.23)} fontSize={attribute(sizes.tag * 0.65)}>
          {stop.number}
        </text>
      </g>
    )
  })
}

/** A goal takes half its width to either side, everything else about half a cone. */
function reachOfItem(stop: SetOutStop, sizes: MarkSizes): number {
  return (stop.instead ?? stop.item) === 'small-goal' ? GOAL_WIDTH / 2 + 0.3 : sizes.coneWidth / 2
}

/** Places along a leg that a tag should keep clear of. */
function reachOfLeg({ from, to }: Leg): readonly Taken[] {
  const count = Math.max(1, Math.ceil(gapBetween(from, to)))
  return Array.from({ length: count + 1 }, (_, index) => ({ at: along(from, to, index / count), reach: 0.4 }))
}

const ITEM_LEGEND = {
  bag: 'bag',
  cone: 'cone',
  pole: 'pole',
  'small-goal': 'smallGoal',
  ball: 'ball',
  bib: 'bib',
} as const satisfies Record<EquipmentKind | 'bag', LegendItem>

function setOutLegend(stops: readonly SetOutStop[]): readonly LegendItem[] {
  const items = new Set<LegendItem>(stops.map((stop) => ITEM_LEGEND[stop.instead ?? stop.item]))
  if (stops.some((stop) => stop.legs.length > 0)) items.add('walk')
  return [...items]
}

import type { FormatChoices } from '../formats'
import { type Landmark, landmarkPoint, landmarksFound, type Marking, type Space } from '../pitch'
import { type Place, placeAt } from './pattern-places'
import type { WalkLine } from './plan'

/** A landmark the walker can see, in whole millimetres. */
export type SeenLandmark = Place & { readonly landmark: Landmark }

/** A painted or flagged line the walker can follow: at `atMm` up the pitch or right of its middle, between two ends. */
export type SeenLine = {
  readonly line: WalkLine
  readonly runs: 'up' | 'across'
  readonly atMm: number
  readonly fromMm: number
  readonly toMm: number
}

export type WalkGround = {
  readonly landmarks: readonly SeenLandmark[]
  readonly lines: readonly SeenLine[]
}

/** What a walk can hold on to: only what exists there. */
export function walkGround(space: Space, choices?: FormatChoices): WalkGround {
  return {
    landmarks: landmarksFound(space, choices).map(({ landmark, point }) => ({ landmark, ...placeAt(point) })),
    lines: linesSeen(space),
  }
}

function linesSeen(space: Space): readonly SeenLine[] {
  const edge = Math.round(space.widthMm / 2)
  const across = (line: WalkLine, atMm: number): SeenLine => ({ line, runs: 'across', atMm, fromMm: -edge, toMm: edge })
  const touchlines: readonly SeenLine[] = [
    { line: 'left-touchline', runs: 'up', atMm: -edge, fromMm: 0, toMm: space.lengthMm },
    { line: 'right-touchline', runs: 'up', atMm: edge, fromMm: 0, toMm: space.lengthMm },
  ]
  const boundary = [...touchlines, across('goal-line', 0)]
  const farLine = space.covers === 'half' ? [] : [across('far-goal-line', space.lengthMm)]
  return [
    ...(isSeen(space, 'boundary') ? [...boundary, ...farLine] : []),
    ...lineAt(space, 'halfway', 'halfway', 'halfway-left'),
    ...lineAt(space, 'build-out-line', 'build-out-line', 'build-out-line-left'),
    ...lineAt(space, 'penalty-area-top', 'penalty-area', 'penalty-area-corner-left'),
  ]
}

/** A line across the pitch between a landmark on its left and the same place on the right. */
function lineAt(space: Space, line: WalkLine, marking: Marking, leftEnd: Landmark): readonly SeenLine[] {
  const end =
    isSeen(space, marking) && (space.covers !== 'plain' || marking === 'halfway') ? landmarkPoint(space, leftEnd) : null
  if (!end) return []
  const { upMm, rightMm } = placeAt(end)
  return [{ line, runs: 'across', atMm: upMm, fromMm: rightMm, toMm: -rightMm }]
}

function isSeen(space: Space, marking: Marking): boolean {
  return space.markings[marking] !== 'none'
}

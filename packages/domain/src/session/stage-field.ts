import type { Pressure, Stage, VersionContent } from '../curriculum'
import {
  firstSteps,
  mirrorPosition,
  type PatternDocument,
  type Position,
  positionsNeeded,
  positionsNeededWithAnswers,
} from '../pattern'
import type { Side } from '../pitch'
import { compareIds } from '../quantities'

/** Live opponents a stage asks for; a shadow is one child who walks. */
export const OPPONENTS_WANTED = {
  none: 0,
  poles: 0,
  shadow: 1,
  x1: 1,
  x2: 2,
  x3: 3,
  x4: 4,
  x5: 5,
  x6: 6,
} as const satisfies Record<Pressure, number>

/** The pattern of a stage, cut to its steps. */
export function stageDocument(content: VersionContent, stage: Stage): PatternDocument | null {
  const found = content.patterns.find((pattern) => pattern.patternId === stage.patternId)
  if (!found) return null
  const { form } = stage
  return form.kind === 'full' || form.steps < 1 ? found.document : firstSteps(found.document, form.steps)
}

/** Who is on the field in the line-ups, and on which sides they play. */
export type StageField = {
  readonly positions: readonly Position[]
  readonly sides: readonly Side[]
  readonly opponents: number
}

type Option = { readonly positions: readonly Position[]; readonly sides: readonly Side[] }

/**
 * The field for so many children. The whole formation first, also for first steps, so that few stand out; then only the positions the pattern needs with its answers, then
 * without them, always for both sides and with the stage's opponents; then with the opponents there are; then on the written
 * side alone. Null when there are fewer children than the smallest of these needs.
 */
export function chooseField(
  document: PatternDocument,
  stage: Stage,
  children: number,
  isOnSpace: (position: Position) => boolean,
): StageField | null {
  const wanted = OPPONENTS_WANTED[stage.pressure]
  const bothSides = optionsForBothSides(document).map((option) => cut(option, isOnSpace))
  const oneSide = cut({ positions: positionsNeeded(document), sides: [document.writtenFor] }, isOnSpace)
  const roomFor = (option: Option) => children - option.positions.length
  const option =
    bothSides.find((each) => each.positions.length > 1 && roomFor(each) >= wanted) ??
    bothSides.toReversed().find((each) => each.positions.length > 1 && roomFor(each) >= 0) ??
    (oneSide.positions.length > 1 && roomFor(oneSide) >= 0 ? oneSide : null)
  return option && { ...option, opponents: Math.min(wanted, roomFor(option)) }
}

/** Fewest children the stage can be run with. */
export function fewestNeeded(document: PatternDocument): readonly Position[] {
  return positionsNeeded(document)
}

function optionsForBothSides(document: PatternDocument): readonly Option[] {
  const sides = ['left', 'right'] as const
  const needed = positionsNeeded(document)
  const answered = positionsNeededWithAnswers(document)
  const whole = document.positions.map((placed) => placed.position)
  return [whole, answered, needed].map((positions) => ({ positions: withMirrored(positions), sides }))
}

function withMirrored(positions: readonly Position[]): readonly Position[] {
  return [...new Set(positions.flatMap((position) => [position, mirrorPosition(position)]))].sort(compareIds)
}

function cut(option: Option, isOnSpace: (position: Position) => boolean): Option {
  return { ...option, positions: option.positions.filter(isOnSpace) }
}

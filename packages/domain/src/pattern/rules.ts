import { formatOf } from '../formats'
import { listSteps } from './actions'
import type { PatternDocument, PlacedPosition } from './document'
import type { DocumentFault } from './faults'
import { landmarkFaults } from './landmark-rules'
import { lookFaults } from './look-rules'
import { possessionFaults } from './possession'
import { stepFaults } from './step-rules'

/** A coaching point is shouted across a pitch: six words at most (habit: common practice, no source). */
export const POINT_WORDS_MAX = 6

/**
 * Structural rules a document must meet to be saved at all, as a draft too: whatever breaks one has no meaning that
 * could be drawn or run. An unfinished document (no steps yet, no teaching content) is no fault; see `missingTeaching`.
 */
export function checkShape(document: PatternDocument): readonly DocumentFault[] {
  return SHAPE_RULES.flatMap((rule) => rule(document))
}

type ShapeRule = (document: PatternDocument) => readonly DocumentFault[]

const SHAPE_RULES: readonly ShapeRule[] = [
  formationFaults,
  positionFaults,
  landmarkFaults,
  idFaults,
  stepFaults,
  possessionFaults,
  pointFaults,
  lookFaults,
]

function formationFaults(document: PatternDocument): readonly DocumentFault[] {
  const players = formatOf(document.formatId).playersPerSide.value
  const faults: DocumentFault[] = []
  if (!/^[1-9](-[1-9])*$/.test(document.formation) || sumOfLines(document.formation) !== players - 1) {
    faults.push({
      code: 'formation-count',
      pointer: '/formation',
      detail: `${document.formation} does not add up to the ${players - 1} outfield players of this format`,
    })
  }
  if (document.positions.length > players) {
    faults.push({
      code: 'formation-count',
      pointer: '/positions',
      detail: `${document.positions.length} positions are more than the ${players} players of this format`,
    })
  }
  return faults
}

function sumOfLines(formation: string): number {
  return formation.split('-').reduce((sum, line) => sum + Number(line), 0)
}

function positionFaults(document: PatternDocument): readonly DocumentFault[] {
  const placed = new Set(document.positions.map((each) => each.position))
  const unplaced = (list: readonly PlacedPosition[], pointer: string): DocumentFault[] =>
    list.flatMap((each, index) =>
      placed.has(each.position)
        ? []
        : [
            {
              code: 'position-unknown',
              pointer: `${pointer}/${index}/position`,
              detail: `${each.position} has no starting place`,
            },
          ],
    )
  return [
    ...repeated(positionNames(document.positions), '/positions', 'position', 'position-twice'),
    ...repeated(positionNames(document.inPossession), '/inPossession', 'position', 'position-twice'),
    ...repeated(positionNames(document.onLoss), '/onLoss', 'position', 'position-twice'),
    ...unplaced(document.inPossession, '/inPossession'),
    ...unplaced(document.onLoss, '/onLoss'),
  ]
}

function positionNames(list: readonly PlacedPosition[]): readonly string[] {
  return list.map((each) => each.position)
}

function repeated(
  names: readonly string[],
  pointer: string,
  field: string,
  code: 'position-twice' | 'id-twice',
): readonly DocumentFault[] {
  return names.flatMap((name, index) =>
    names.indexOf(name) === index
      ? []
      : [{ code, pointer: `${pointer}/${index}/${field}`, detail: `${name} is used twice` }],
  )
}

/** Ids are unique across trunk and answers, so that a note or an edit can name a step by its id alone. */
function idFaults(document: PatternDocument): readonly DocumentFault[] {
  const steps = listSteps(document)
  const ids = steps.map(({ step }) => step.stepId)
  const stepsTwice = steps.flatMap(({ step, pointer }, index): DocumentFault[] =>
    ids.indexOf(step.stepId) === index
      ? []
      : [{ code: 'id-twice', pointer: `${pointer}/stepId`, detail: `${step.stepId} is used twice` }],
  )
  return [
    ...stepsTwice,
    ...repeated(
      document.targets.map((each) => each.targetId),
      '/targets',
      'targetId',
      'id-twice',
    ),
    ...repeated(
      document.obstacles.map((each) => each.obstacleId),
      '/obstacles',
      'obstacleId',
      'id-twice',
    ),
    ...repeated(
      document.looks.map((each) => each.lookId),
      '/looks',
      'lookId',
      'id-twice',
    ),
  ]
}

function pointFaults(document: PatternDocument): readonly DocumentFault[] {
  return listSteps(document).flatMap(({ step, pointer }): DocumentFault[] => {
    const words = countWords(step.point)
    return words <= POINT_WORDS_MAX
      ? []
      : [
          {
            code: 'point-too-long',
            pointer: `${pointer}/point`,
            detail: `a coaching point has at most ${POINT_WORDS_MAX} words, this has ${words}`,
          },
        ]
  })
}

export function countWords(text: string): number {
  return text.split(/\s+/u).filter((word) => word.length > 0).length
}

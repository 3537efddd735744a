import { type FormatId, formatOf } from '@espalier/domain/formats'
import {
  formationsOf,
  GOALKEEPER,
  type PatternDocument,
  type PlacedPosition,
  startingPositions,
  type Target,
} from '@espalier/domain/pattern'
import { millimetres } from '@espalier/domain/quantities'
import { newPass } from './change-action'

/** Where a new pattern starts: everyone in their usual places, their goal to shoot at, and the goalkeeper's first pass. */
export function blankPattern(formatId: FormatId, ageGroup: string): PatternDocument {
  const formation = formationsOf(formatId)[0] ?? ''
  const empty: PatternDocument = {
    v: 1,
    title: '',
    problem: '',
    formatId,
    formation,
    ageGroup,
    writtenFor: 'right',
    positions: usualPlaces(formatId, formation),
    inPossession: [],
    onLoss: [],
    obstacles: [],
    targets: [theirGoal(formatId)],
    restart: 'goal-kick',
    steps: [],
    looks: [],
    teaching: {
      why: '',
      good: '',
      mistakes: [
        { seen: '', change: '' },
        { seen: '', change: '' },
      ],
      question: '',
      easier: '',
      harder: '',
      callWords: [],
      goLong: '',
    },
  }
  return { ...empty, steps: [{ stepId: 's1', action: newPass(empty, [], GOALKEEPER), runs: [], point: '' }] }
}

export function usualPlaces(formatId: FormatId, formation: string): readonly PlacedPosition[] {
  return startingPositions(formatId, formation)?.value ?? []
}

export function theirGoal(formatId: FormatId): Target {
  const { widthMm } = formatOf(formatId).goal.value
  const spot = { landmark: 'far-goal-centre', upMm: millimetres(0), rightMm: millimetres(0) } as const
  return { targetId: 't1', kind: 'goal', spot, widthMm }
}

import type { BallAction, Obstacle, PatternDocument, Step, Target } from '@espalier/domain/pattern'
import { millimetres } from '@espalier/domain/quantities'
import { theirGoal } from './blank-pattern'
import { freeId } from './free-id'
import { mapSteps } from './map-steps'

/** What stands on the pitch besides the own players. */
export type SurroundingEdit =
  | { readonly kind: 'add-obstacle'; readonly obstacle: Obstacle['kind'] }
  | { readonly kind: 'set-obstacle'; readonly obstacle: Obstacle }
  | { readonly kind: 'remove-obstacle'; readonly obstacleId: string }
  | { readonly kind: 'add-target'; readonly target: Target['kind'] }
  | { readonly kind: 'set-target'; readonly target: Target }
  | { readonly kind: 'remove-target'; readonly targetId: string }

const KINDS = ['add-obstacle', 'set-obstacle', 'remove-obstacle', 'add-target', 'set-target', 'remove-target']

export function isSurroundingEdit(change: { readonly kind: string }): change is SurroundingEdit {
  return KINDS.includes(change.kind)
}

/** Inside widths to begin with, in metres (common practice, no source). */
const WIDTHS = { 'small-goal': 2, gate: 3 } as const

export function changeSurroundings(document: PatternDocument, edit: SurroundingEdit): PatternDocument {
  const { obstacles, targets } = document
  switch (edit.kind) {
    case 'add-obstacle': {
      const obstacleId = freeId(
        'o',
        obstacles.map((each) => each.obstacleId),
      )
      const spot = { landmark: 'penalty-area-top', upMm: millimetres(5000), rightMm: millimetres(0) } as const
      return { ...document, obstacles: [...obstacles, { obstacleId, kind: edit.obstacle, spot }] }
    }
    case 'set-obstacle':
      return {
        ...document,
        obstacles: obstacles.map((each) => (each.obstacleId === edit.obstacle.obstacleId ? edit.obstacle : each)),
      }
    case 'remove-obstacle':
      return withoutObstacle(document, edit.obstacleId)
    case 'add-target':
      return { ...document, targets: [...targets, newTarget(document, edit.target)] }
    case 'set-target':
      return {
        ...document,
        targets: targets.map((each) => (each.targetId === edit.target.targetId ? edit.target : each)),
      }
    case 'remove-target':
      return withoutTarget(document, edit.targetId)
  }
}

function newTarget(document: PatternDocument, kind: Target['kind']): Target {
  const targetId = freeId(
    't',
    document.targets.map((each) => each.targetId),
  )
  if (kind === 'goal') return { ...theirGoal(document.formatId), targetId }
  const spot = { landmark: 'centre-mark', upMm: millimetres(0), rightMm: millimetres(0) } as const
  return { targetId, kind, spot, widthMm: millimetres(WIDTHS[kind] * 1000) }
}

/** Who carried at it carries on; who dribbled past it carries to the same place. */
function withoutObstacle(document: PatternDocument, obstacleId: string): PatternDocument {
  const without = (action: BallAction): BallAction => {
    if (action.kind === 'carry' && action.at === obstacleId) return { ...action, at: null }
    if (action.kind === 'dribble-past' && action.past === obstacleId)
      return { kind: 'carry', by: action.by, to: action.to, at: null }
    return action
  }
  const obstacles = document.obstacles.filter((each) => each.obstacleId !== obstacleId)
  return mapSteps({ ...document, obstacles }, (step) => withAction(step, without(step.action)))
}

/** Shots at it go to the first target left; with none left they stand as something to mend. */
function withoutTarget(document: PatternDocument, targetId: string): PatternDocument {
  const targets = document.targets.filter((each) => each.targetId !== targetId)
  const next = targets[0]?.targetId ?? targetId
  return mapSteps({ ...document, targets }, (step) =>
    step.action.kind === 'shot' && step.action.target === targetId
      ? withAction(step, { ...step.action, target: next })
      : step,
  )
}

function withAction(step: Step, action: BallAction): Step {
  return action === step.action ? step : { ...step, action }
}

import {
  actorOf,
  type BallAction,
  GOALKEEPER,
  listSteps,
  type PatternDocument,
  type Run,
  receiverOf,
  type Step,
} from '@espalier/domain/pattern'
import { inserted, moved, removed, replaced } from '../writing/list-edits'
import { actionOfKind, newCarry, newPass } from './change-action'
import { freeId } from './free-id'
import { mapSteps, withSteps } from './map-steps'
import { findStep, furtherUp, holderAfter, type StepList, standsAt, stepsBefore, stepsOf } from './step-path'

export type StepEdit =
  | { readonly kind: 'insert-step'; readonly list: StepList; readonly at: number }
  | { readonly kind: 'duplicate-step'; readonly stepId: string }
  | { readonly kind: 'move-step'; readonly stepId: string; readonly by: -1 | 1 }
  | { readonly kind: 'remove-step'; readonly stepId: string }
  | { readonly kind: 'action'; readonly stepId: string; readonly action: BallAction }
  | { readonly kind: 'action-kind'; readonly stepId: string; readonly to: BallAction['kind'] }
  | { readonly kind: 'point'; readonly stepId: string; readonly text: string }
  | { readonly kind: 'add-run'; readonly stepId: string; readonly position: string }
  | { readonly kind: 'run'; readonly stepId: string; readonly index: number; readonly run: Run }
  | { readonly kind: 'remove-run'; readonly stepId: string; readonly index: number }

const KINDS = [
  'insert-step',
  'duplicate-step',
  'move-step',
  'remove-step',
  'action',
  'action-kind',
  'point',
  'add-run',
  'run',
  'remove-run',
]

export function isStepEdit(change: { readonly kind: string }): change is StepEdit {
  return KINDS.includes(change.kind)
}

/** How far a new run goes before its place is written. */
const RUN_METRES = 8

export function changeSteps(document: PatternDocument, edit: StepEdit): PatternDocument {
  if (edit.kind === 'insert-step') return insertStep(document, edit.list, edit.at)
  const found = findStep(document, edit.stepId)
  if (found === null) return document
  const { step, list, index, before } = found
  const change = (next: Step) => mapSteps(document, (each) => (each.stepId === step.stepId ? next : each))
  switch (edit.kind) {
    case 'duplicate-step': {
      const copy = { ...step, stepId: newStepId(document), action: answeredPass(step.action) }
      return withSteps(document, list, (steps) => inserted(steps, index + 1, copy))
    }
    case 'move-step':
      return withSteps(document, list, (steps) => moved(steps, index, edit.by))
    case 'remove-step':
      return removeStep(document, list, index, step.stepId)
    case 'action':
      return change({ ...step, action: edit.action })
    case 'action-kind':
      return change({ ...step, action: actionOfKind(document, before, step.action, edit.to) })
    case 'point':
      return change({ ...step, point: edit.text })
    case 'add-run': {
      const to = furtherUp(standsAt(document, before, edit.position), RUN_METRES)
      return change({ ...step, runs: [...step.runs, { position: edit.position, to, start: 'with-the-ball' }] })
    }
    case 'run':
      return change({ ...step, runs: replaced(step.runs, edit.index, edit.run) })
    case 'remove-run':
      return change({ ...step, runs: removed(step.runs, edit.index) })
  }
}

export function newStepId(document: PatternDocument): string {
  return freeId(
    's',
    listSteps(document).map(({ step }) => step.stepId),
  )
}

/** At the end a pass comes next; between two steps a carry, which leaves both as they were. */
function insertStep(document: PatternDocument, list: StepList, at: number): PatternDocument {
  const before = stepsBefore(document, list, at)
  const next = stepsOf(document, list)[at]
  const holder = holderAfter(before) ?? (next === undefined ? GOALKEEPER : actorOf(next.action))
  const isLast = next === undefined
  const action = isLast ? newPass(document, before, holder) : newCarry(document, before, holder)
  const step: Step = { stepId: newStepId(document), action, runs: [], point: '' }
  return withSteps(document, list, (steps) => inserted(steps, at, step))
}

/** A copy of a pass would be played by its receiver to themselves: it goes back to who played it. */
function answeredPass(action: BallAction): BallAction {
  const receiver = receiverOf(action)
  const actor = actorOf(action)
  if (action.kind === 'carry' || action.kind === 'dribble-past' || action.kind === 'shot') return action
  return receiver === actor ? action : { ...action, to: actor }
}

/** What hung on the step goes with it; an answer that rejoined there is now a way out. */
function removeStep(document: PatternDocument, list: StepList, index: number, stepId: string): PatternDocument {
  if (stepsOf(document, list).length <= 1) return document
  const without = withSteps(document, list, (steps) => removed(steps, index))
  const looks = without.looks
    .filter((look) => look.stepId !== stepId)
    .map((look) => ({
      ...look,
      answers: look.answers.map((answer) =>
        answer.rejoins === stepId ? { ...answer, rejoins: 'exit' as const } : answer,
      ),
    }))
  return { ...without, looks }
}

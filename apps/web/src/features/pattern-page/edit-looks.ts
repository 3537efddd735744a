import { type Answer, actorOf, type Look, type PatternDocument, type Position } from '@espalier/domain/pattern'
import { inserted, removed, replaced } from '../writing/list-edits'
import { newPass } from './change-action'
import { newStepId } from './edit-steps'
import { freeId } from './free-id'
import { stepsBefore } from './step-path'

export type LookEdit =
  /** A look begins with its exit: what to do when all is shut. */
  | { readonly kind: 'add-look'; readonly stepId: string }
  | { readonly kind: 'remove-look'; readonly lookId: string }
  | { readonly kind: 'add-answer'; readonly lookId: string }
  | { readonly kind: 'remove-answer'; readonly lookId: string; readonly answer: number }
  | {
      readonly kind: 'answer'
      readonly lookId: string
      readonly answer: number
      readonly sign: Answer['sign']
      readonly about: Position | null
      readonly rejoins: string
    }

const KINDS = ['add-look', 'remove-look', 'add-answer', 'remove-answer', 'answer']

export function isLookEdit(change: { readonly kind: string }): change is LookEdit {
  return KINDS.includes(change.kind)
}

/** Signs that speak of one player. */
export const SIGNS_ABOUT_SOMEONE: readonly Answer['sign'][] = ['presser-comes-at', 'lane-shut']

export function changeLooks(document: PatternDocument, edit: LookEdit): PatternDocument {
  switch (edit.kind) {
    case 'add-look':
      return addLook(document, edit.stepId)
    case 'remove-look':
      return { ...document, looks: document.looks.filter((look) => look.lookId !== edit.lookId) }
    case 'add-answer':
      return changeLook(document, edit.lookId, (look) => {
        // The exit stays the last.
        const answer = newAnswer(document, look, 'presser-comes-at')
        return { ...look, answers: inserted(look.answers, Math.max(0, look.answers.length - 1), answer) }
      })
    case 'remove-answer':
      return changeLook(document, edit.lookId, (look) => ({ ...look, answers: removed(look.answers, edit.answer) }))
    case 'answer':
      return changeLook(document, edit.lookId, (look) => {
        const answer = look.answers[edit.answer]
        if (answer === undefined) return look
        const about = SIGNS_ABOUT_SOMEONE.includes(edit.sign) ? (edit.about ?? look.by) : null
        const next = { ...answer, sign: edit.sign, about, rejoins: edit.rejoins }
        return { ...look, answers: replaced(look.answers, edit.answer, next) }
      })
  }
}

function changeLook(document: PatternDocument, lookId: string, change: (look: Look) => Look): PatternDocument {
  return { ...document, looks: document.looks.map((look) => (look.lookId === lookId ? change(look) : look)) }
}

function addLook(document: PatternDocument, stepId: string): PatternDocument {
  const step = document.steps.find((each) => each.stepId === stepId)
  if (step === undefined || document.looks.some((look) => look.stepId === stepId)) return document
  const lookId = freeId(
    'l',
    document.looks.map((look) => look.lookId),
  )
  const bare: Look = { lookId, stepId, by: actorOf(step.action), answers: [] }
  return { ...document, looks: [...document.looks, { ...bare, answers: [newAnswer(document, bare, 'all-shut')] }] }
}

/** An answer begins with one pass: in the air when all is shut, on the ground else. */
function newAnswer(document: PatternDocument, look: Look, sign: Answer['sign']): Answer {
  const at = document.steps.findIndex((step) => step.stepId === look.stepId)
  const before = stepsBefore(document, { kind: 'trunk' }, Math.max(0, at))
  const pass = newPass(document, before, look.by)
  const highest = document.positions.at(-1)?.position
  const over = sign === 'all-shut' && pass.kind === 'pass' && highest !== undefined && highest !== look.by
  const action = over ? { ...pass, to: highest, height: 'air' as const } : pass
  const about = SIGNS_ABOUT_SOMEONE.includes(sign) ? look.by : null
  return { sign, about, steps: [{ stepId: newStepId(document), action, runs: [], point: '' }], rejoins: 'exit' }
}

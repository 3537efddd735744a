import { applyRemedy, type Remedy } from '@espalier/domain/check'
import type { FormatId } from '@espalier/domain/formats'
import { formationsOf, type Obstacle, type PatternDocument, type Position, type Target } from '@espalier/domain/pattern'
import type { Side, Spot } from '@espalier/domain/pitch'
import { replaced } from '../writing/list-edits'
import { theirGoal, usualPlaces } from './blank-pattern'
import { changeLooks, isLookEdit, type LookEdit } from './edit-looks'
import { changeSteps, isStepEdit, type StepEdit } from './edit-steps'
import { changeSurroundings, isSurroundingEdit, type SurroundingEdit } from './edit-surroundings'
import { passBallOn } from './step-path'

export type TeachingText = 'why' | 'good' | 'question' | 'easier' | 'harder' | 'goLong'

/** One change of a pattern as data: forms make these today, a hand on the drawing can make the same ones. */
export type PatternChange =
  | { readonly kind: 'words'; readonly field: 'title' | 'problem'; readonly text: string }
  | { readonly kind: 'teaching'; readonly field: TeachingText; readonly text: string }
  | { readonly kind: 'mistake'; readonly index: number; readonly field: 'seen' | 'change'; readonly text: string }
  | { readonly kind: 'call-words'; readonly words: readonly string[] }
  | { readonly kind: 'format'; readonly formatId: FormatId }
  | { readonly kind: 'formation'; readonly formation: string }
  | { readonly kind: 'age-group'; readonly ageGroup: string }
  | { readonly kind: 'side'; readonly side: Side }
  | { readonly kind: 'restart'; readonly restart: PatternDocument['restart'] }
  | { readonly kind: 'place'; readonly position: Position; readonly spot: Spot }
  | { readonly kind: 'mend'; readonly remedy: Remedy }
  | SurroundingEdit
  | StepEdit
  | LookEdit

export type { Obstacle, Target }

/** The document after one change. Whoever has the ball plays the next step, whatever was moved or taken out. */
export function changePattern(document: PatternDocument, change: PatternChange): PatternDocument {
  const next = changed(document, change)
  return next === document ? document : passBallOn(next)
}

function changed(document: PatternDocument, change: PatternChange): PatternDocument {
  if (isStepEdit(change)) return changeSteps(document, change)
  if (isLookEdit(change)) return changeLooks(document, change)
  if (isSurroundingEdit(change)) return changeSurroundings(document, change)
  switch (change.kind) {
    case 'words':
      return { ...document, [change.field]: change.text }
    case 'teaching':
      return { ...document, teaching: { ...document.teaching, [change.field]: change.text } }
    case 'mistake':
      return withMistake(document, change)
    case 'call-words':
      return { ...document, teaching: { ...document.teaching, callWords: change.words } }
    case 'format':
      return inFormat(document, change.formatId)
    case 'formation':
      return {
        ...document,
        formation: change.formation,
        positions: usualPlaces(document.formatId, change.formation),
      }
    case 'age-group':
      return { ...document, ageGroup: change.ageGroup }
    case 'side':
      return { ...document, writtenFor: change.side }
    case 'restart':
      return { ...document, restart: change.restart }
    case 'place':
      return {
        ...document,
        positions: document.positions.map((placed) =>
          placed.position === change.position ? { ...placed, spot: change.spot } : placed,
        ),
      }
    case 'mend':
      return applyRemedy(document, change.remedy)
  }
}

type MistakeChange = Extract<PatternChange, { kind: 'mistake' }>

function withMistake(document: PatternDocument, { index, field, text }: MistakeChange): PatternDocument {
  const { mistakes } = document.teaching
  const filled = [...mistakes, ...Array.from({ length: Math.max(0, index + 1 - mistakes.length) }, () => EMPTY_MISTAKE)]
  const mistake = { ...(filled[index] ?? EMPTY_MISTAKE), [field]: text }
  return { ...document, teaching: { ...document.teaching, mistakes: replaced(filled, index, mistake) } }
}

const EMPTY_MISTAKE = { seen: '', change: '' }

/** Another game: its first formation in its usual places, its goal; the steps stay, and say what no longer fits. */
function inFormat(document: PatternDocument, formatId: FormatId): PatternDocument {
  if (formatId === document.formatId) return document
  const formation = formationsOf(formatId)[0] ?? document.formation
  const goalWas = theirGoal(document.formatId).widthMm
  const targets = document.targets.map((target) =>
    target.kind === 'goal' && target.widthMm === goalWas ? { ...target, widthMm: theirGoal(formatId).widthMm } : target,
  )
  return { ...document, formatId, formation, targets, positions: usualPlaces(formatId, formation) }
}

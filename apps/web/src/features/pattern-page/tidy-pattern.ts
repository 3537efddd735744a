import { patternDocument } from '@espalier/contract/patterns'
import { checkShape, type PatternDocument, type Step } from '@espalier/domain/pattern'
import * as z from 'zod/mini'
import { patternsMessage } from '../../messages/patterns'
import { tidyText } from '../writing/tidy-text'
import { mapSteps } from './map-steps'

/** The document as it is sent: its texts tidied, mistakes that say nothing left out. */
export function tidyPattern(document: PatternDocument): PatternDocument {
  const { teaching } = document
  const mistakes = teaching.mistakes
    .map(({ seen, change }) => ({ seen: tidyText(seen), change: tidyText(change) }))
    .filter(({ seen, change }) => seen !== '' || change !== '')
  const tidy: PatternDocument = {
    ...document,
    title: tidyText(document.title),
    problem: tidyText(document.problem),
    teaching: {
      why: tidyText(teaching.why),
      good: tidyText(teaching.good),
      mistakes,
      question: tidyText(teaching.question),
      easier: tidyText(teaching.easier),
      harder: tidyText(teaching.harder),
      callWords: teaching.callWords.map(tidyText).filter((word) => word !== ''),
      goLong: tidyText(teaching.goLong),
    },
  }
  return mapSteps(tidy, (step): Step => ({ ...step, point: tidyText(step.point) }))
}

/** Something that keeps the document from being saved at all, with the place it speaks of. */
export type PatternFault = { readonly pointer: string; readonly detail: string }

/** Faults of a tidy document, in the order a reader meets them. The API finds the same ones. */
export function listFaults(document: PatternDocument): readonly PatternFault[] {
  const titled = document.title === '' ? [{ pointer: '/title', detail: patternsMessage('titleMissing') }] : []
  const meaning = checkShape(document).map(({ pointer, detail }) => ({ pointer, detail }))
  const parsed = z.safeParse(patternDocument, titledPattern(document))
  const shape = parsed.success
    ? []
    : parsed.error.issues.map((issue) => ({ pointer: `/${issue.path.join('/')}`, detail: issue.message }))
  const known = new Set([...titled, ...meaning].map(({ pointer }) => pointer))
  return [...titled, ...meaning, ...shape.filter(({ pointer }) => !known.has(pointer))]
}

/** Kept and compared documents may still lack their title; everything else must hold to the shape. */
export const unfinishedPattern: z.ZodMiniType<PatternDocument> = z.custom<PatternDocument>(
  (value) =>
    typeof value === 'object' &&
    value !== null &&
    'title' in value &&
    z.safeParse(patternDocument, value.title === '' ? { ...value, title: '?' } : value).success,
)

function titledPattern(document: PatternDocument): PatternDocument {
  return document.title === '' ? { ...document, title: '?' } : document
}

/** The id of the step a pointer leads into; null for what is no step's. */
export function stepAtPointer(document: PatternDocument, pointer: string): string | null {
  const trunk = /^\/steps\/(\d+)/.exec(pointer)
  if (trunk !== null) return document.steps[Number(trunk[1])]?.stepId ?? null
  const answer = /^\/looks\/(\d+)(?:\/answers\/(\d+)(?:\/steps\/(\d+))?)?/.exec(pointer)
  if (answer === null) return null
  const look = document.looks[Number(answer[1])]
  const step = look?.answers[Number(answer[2])]?.steps[Number(answer[3])]
  return step?.stepId ?? look?.stepId ?? null
}

import type { LookCover, XCount, XCover } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'

/** Who reads: a director weighs shares, a coach is told where nothing is open and no share of anything. */
export type CoverReader = 'director' | 'coach'

const X_WORDS = { 1: 'oneX', 2: 'twoX', 3: 'threeX' } as const satisfies Record<XCount, string>

/** One sentence on a look against so many X. */
export function coverSentence(cover: XCover, reader: CoverReader): string {
  if (reader === 'director') return cover.sentence
  const opponents = patternsMessage(X_WORDS[cover.opponents])
  const { placements, open, holes } = cover
  if (placements === 0) return patternsMessage('coverNoRoom', { opponents })
  if (open === placements) return patternsMessage('coverAll', { opponents })
  if (open === 0) return patternsMessage('coverNone', { opponents })
  if (holes.length === 0) return patternsMessage('coverFew', { opponents })
  return patternsMessage('coverHoles', {
    opponents,
    holes: holes.map((hole) => hole.words).join(patternsMessage('coverOr')),
  })
}

/** As "before step 3, by GK". */
export function lookTitle(
  document: PatternDocument,
  { stepId, by }: Pick<LookCover, 'stepId' | 'by'>,
  key: 'lookTitle' | 'mapLook',
): string {
  return patternsMessage(key, { number: stepNumber(document, stepId), by })
}

/** As in the script, from 1. */
export function stepNumber(document: PatternDocument, stepId: string): number {
  return document.steps.findIndex((step) => step.stepId === stepId) + 1
}

import type { CheckChoices, LookCover } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import type { CheckSetting } from './check-setting'

/** To the worker: this is what stands on the page now. Of several questions only the last one counts. */
export type PressureQuestion = {
  readonly revision: number
  readonly document: PatternDocument
  readonly choices: CheckChoices
  readonly setting: CheckSetting
}

/** How far a pattern gets under pressure, in the words the page shows. */
export type PressureWords = {
  readonly headline: string
  /** What would mend the first break. */
  readonly mends: readonly string[]
  /** One for each behaviour of the opponents. */
  readonly behaviours: readonly { readonly sentence: string; readonly mends: readonly string[] }[]
  readonly worksAgainst: number
  readonly tried: number
  readonly isStopped: boolean
}

/** Back, one part after the other: looks are quick, pressure takes longer. */
export type PressureAnswer = { readonly revision: number } & (
  | { readonly part: 'looks'; readonly looks: readonly LookCover[] }
  | { readonly part: 'pressure'; readonly pressure: PressureWords }
  | { readonly part: 'fault'; readonly fault: string }
)

/** The part of an answer that ends the work on a question. */
export function isLast(answer: PressureAnswer): boolean {
  return answer.part !== 'looks'
}

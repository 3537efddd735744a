import type { Stage } from '../curriculum'
import type { PatternDocument } from '../pattern'
import type { Space } from '../pitch'
import { type ChosenEvening, chooseEvening } from './choose-stage'
import type { Kit } from './kit'
import { planNote } from './notes'
import type { PlanNote } from './plan'
import { whyNotPractised } from './practise-pattern'
import { stageDocument } from './stage-field'
import type { Child } from './who-came'

/** Below this no pattern is run, whatever the stage. */
export const CHILDREN_MIN = 4

/** What a stage's practice needs of the version. */
export type ThemeRun = { readonly stage: Stage; readonly document: PatternDocument }

export type Theme = Pick<ChosenEvening, 'choice' | 'model'> & {
  /** Null where there is no stage, or too few came for it. */
  readonly run: ThemeRun | null
  readonly notes: readonly PlanNote[]
}

/** Tonight's stage and model session out of the version, or why there is none. */
export function chooseTheme(kit: Kit, children: readonly Child[], space: Space): Theme {
  const content = kit.adopted?.content
  if (!content) return { choice: null, model: null, run: null, notes: [planNote('no-version')] }
  const { stage, choice, model } = chooseEvening(content, kit.progress)
  const noModel = model ? [] : [planNote('no-model-session')]
  const without = (...notes: readonly PlanNote[]): Theme => {
    return { choice: null, model, run: null, notes: [...noModel, ...notes] }
  }
  const document = stage && stageDocument(content, stage)
  if (!stage || !document) return without(planNote('no-stage'))
  if (children.length < CHILDREN_MIN) return without()
  const whyNot = whyNotPractised({ document, stage, children, space, choices: content.settings })
  if (whyNot) return without(whyNot)
  const days = kit.progress.find((progress) => progress.stageId === stage.stageId)?.sessions ?? 0
  return { choice, model, run: { stage, document }, notes: [...noModel, planNote('stage-chosen', stage.title, days)] }
}

import type { EveningFacts, SessionPlan } from '@espalier/domain/session'

/** To the worker: plan this. Only the last question asked counts. */
export type PlanQuestion = {
  readonly number: number
  readonly facts: EveningFacts
  readonly before: SessionPlan | null
}

/** Back: the plan, and what changed against the one before in one line. */
export type PlanAnswer =
  | {
      readonly number: number
      readonly ok: true
      readonly plan: SessionPlan
      readonly change: string | null
      readonly milliseconds: number
    }
  | { readonly number: number; readonly ok: false; readonly fault: string }

import { ANSWER_STEPS_MAX } from '@espalier/domain/pattern'
import type { StepList } from './step-path'

/** The contract takes twelve steps; an answer is short, or nobody remembers it. */
export const STEPS_MAX = { trunk: 12, answer: ANSWER_STEPS_MAX } as const satisfies Record<StepList['kind'], number>

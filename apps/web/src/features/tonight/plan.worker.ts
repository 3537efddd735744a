import { describePlanChange, planEvening } from '@espalier/domain/session'
import type { PlanAnswer, PlanQuestion } from './plan-message'

// The planner runs beside the page, so that a tap is never late because a plan is being made.
self.addEventListener('message', ({ data }: MessageEvent<PlanQuestion>) => {
  self.postMessage(answer(data))
})

function answer({ number, facts, before }: PlanQuestion): PlanAnswer {
  try {
    const from = performance.now()
    const plan = planEvening(facts)
    const milliseconds = Math.round(performance.now() - from)
    const change = before === null ? null : describePlanChange(before, plan)
    return { number, ok: true, plan, change, milliseconds }
  } catch (error) {
    // A planner that breaks is our mistake; the page then says so instead of waiting for ever.
    return { number, ok: false, fault: error instanceof Error ? error.message : String(error) }
  }
}

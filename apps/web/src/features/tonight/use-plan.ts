import type { EveningFacts, SessionPlan } from '@espalier/domain/session'
import { useEffect, useRef, useState } from 'react'
import type { PlanAnswer, PlanQuestion } from './plan-message'

export type Planned = {
  readonly plan: SessionPlan | null
  /** The facts this plan was made from: the next ones may be on their way. */
  readonly facts: EveningFacts | null
  /** What the last change of facts changed in the plan. */
  readonly change: string | null
  readonly isPlanning: boolean
  readonly fault: string | null
}

const NOTHING: Planned = { plan: null, facts: null, change: null, isPlanning: false, fault: null }

/** Plans anew the moment any fact changes; until the answer comes the last plan stays on the page. */
export function usePlan(facts: EveningFacts | null): Planned {
  const [planned, setPlanned] = useState(NOTHING)
  const worker = useRef<Worker | null>(null)
  const asked = useRef<{ number: number; facts: EveningFacts | null }>({ number: 0, facts: null })
  const standing = useRef<SessionPlan | null>(null)

  useEffect(() => {
    const started = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module' })
    worker.current = started
    started.addEventListener('message', ({ data }: MessageEvent<PlanAnswer>) => {
      if (data.number !== asked.current.number) return
      if (!data.ok) {
        setPlanned((last) => ({ ...last, isPlanning: false, fault: data.fault }))
        return
      }
      const isSameEvening = standing.current !== null
      standing.current = data.plan
      setPlanned((last) => ({
        plan: data.plan,
        facts: asked.current.facts,
        change: isSameEvening ? (data.change ?? last.change) : null,
        isPlanning: false,
        fault: null,
      }))
    })
    started.addEventListener('error', (event) => {
      setPlanned((last) => ({ ...last, isPlanning: false, fault: event.message || 'worker' }))
    })
    return () => {
      started.terminate()
      worker.current = null
    }
  }, [])

  useEffect(() => {
    if (facts === null) return
    // Another evening is no change of this one.
    if (asked.current.facts?.date.dateId !== facts.date.dateId) standing.current = null
    const number = asked.current.number + 1
    asked.current = { number, facts }
    setPlanned((last) => ({ ...last, isPlanning: true }))
    worker.current?.postMessage({ number, facts, before: standing.current } satisfies PlanQuestion)
  }, [facts])

  return planned
}

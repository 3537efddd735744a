import { assert } from '../quantities'
import { actorOf, receiverOf } from './actions'
import type { Answer, PatternDocument, Position, Step } from './document'

/**
 * The first steps of a pattern as a pattern of their own, as a stage "first k steps" trains it.
 * Players keep their places; a look behind the cut goes, and an answer that rejoined behind the cut ends there.
 */
export function firstSteps(document: PatternDocument, count: number): PatternDocument {
  assert(Number.isSafeInteger(count) && count >= 1, 'a cut keeps at least one step')
  const steps = document.steps.slice(0, count)
  const kept = new Set(steps.map((step) => step.stepId))
  const endAtCut = (answer: Answer): Answer => (kept.has(answer.rejoins) ? answer : { ...answer, rejoins: 'exit' })
  const looks = document.looks
    .filter((look) => kept.has(look.stepId))
    .map((look) => ({ ...look, answers: look.answers.map(endAtCut) }))
  return { ...document, steps, looks }
}

/** The positions that play or run in the trunk, in the order they are placed: whom a stage cannot do without. */
export function positionsNeeded(document: PatternDocument): readonly Position[] {
  return involved(document, document.steps)
}

/** As `positionsNeeded`, with those whom an answer of a look brings in. */
export function positionsNeededWithAnswers(document: PatternDocument): readonly Position[] {
  const answers = document.looks.flatMap((look) => look.answers.flatMap((answer) => answer.steps))
  return involved(document, [...document.steps, ...answers])
}

function involved(document: PatternDocument, steps: readonly Step[]): readonly Position[] {
  const names = new Set<Position>()
  for (const step of steps) {
    names.add(actorOf(step.action))
    const receiver = receiverOf(step.action)
    if (receiver !== null) names.add(receiver)
    for (const run of step.runs) names.add(run.position)
  }
  return document.positions.map((each) => each.position).filter((position) => names.has(position))
}

import { actorOf, type PatternDocument, type Position, placeOf, receiverOf, type Step } from '@espalier/domain/pattern'
import type { Spot } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'

/** Which list a step stands in: the trunk, or one answer of a look. */
export type StepList =
  | { readonly kind: 'trunk' }
  | { readonly kind: 'answer'; readonly lookId: string; readonly answer: number }

export type FoundStep = {
  readonly step: Step
  readonly list: StepList
  readonly index: number
  /** Everything played before it: the trunk so far and, in an answer, the answer so far. */
  readonly before: readonly Step[]
}

export function stepsOf(document: PatternDocument, list: StepList): readonly Step[] {
  if (list.kind === 'trunk') return document.steps
  return document.looks.find((look) => look.lookId === list.lookId)?.answers[list.answer]?.steps ?? []
}

/** Everything played before a place in a list. */
export function stepsBefore(document: PatternDocument, list: StepList, index: number): readonly Step[] {
  const own = stepsOf(document, list).slice(0, index)
  if (list.kind === 'trunk') return own
  const look = document.looks.find((each) => each.lookId === list.lookId)
  const at = document.steps.findIndex((step) => step.stepId === look?.stepId)
  return [...document.steps.slice(0, Math.max(0, at)), ...own]
}

export function listsOf(document: PatternDocument): readonly StepList[] {
  const answers = document.looks.flatMap((look) =>
    look.answers.map((_, answer): StepList => ({ kind: 'answer', lookId: look.lookId, answer })),
  )
  return [{ kind: 'trunk' }, ...answers]
}

export function findStep(document: PatternDocument, stepId: string): FoundStep | null {
  for (const list of listsOf(document)) {
    const index = stepsOf(document, list).findIndex((step) => step.stepId === stepId)
    const step = stepsOf(document, list)[index]
    if (step !== undefined) return { step, list, index, before: stepsBefore(document, list, index) }
  }
  return null
}

/** Who has the ball after these steps: anyone before the restart (undefined), nobody after a shot (null). */
export function holderAfter(steps: readonly Step[]): Position | null | undefined {
  const last = steps.at(-1)
  return last === undefined ? undefined : receiverOf(last.action)
}

/** Where a player is after these steps: the last place a run, a carry or a ball took them to, else where they start. */
export function standsAt(document: PatternDocument, steps: readonly Step[], position: Position): Spot {
  let spot = document.positions.find((placed) => placed.position === position)?.spot ?? GOAL_CENTRE
  for (const { action, runs } of steps) {
    const run = runs.find((each) => each.position === position)
    if (run !== undefined) spot = run.to
    const place = placeOf(action)
    if (place !== null && receiverOf(action) === position) spot = place
  }
  return spot
}

/** A place so many metres further up the pitch, from the same landmark. */
export function furtherUp(spot: Spot, metres: number): Spot {
  return { ...spot, upMm: millimetres(spot.upMm + metres * 1000) }
}

/** The pattern as it goes when one answer of a look is taken: what the drawing shows while that answer is read. */
export function answeredPattern(document: PatternDocument, list: StepList): PatternDocument {
  if (list.kind === 'trunk') return document
  const own = stepsOf(document, list)
  return { ...document, steps: [...stepsBefore(document, list, 0), ...own], looks: [] }
}

/** The ball goes from hand to hand: whoever has it plays the next step. Only the taker of the restart is a free choice. */
export function passBallOn(document: PatternDocument): PatternDocument {
  const steps = followed(document.steps, undefined)
  const looks = document.looks.map((look) => {
    const step = steps.find((each) => each.stepId === look.stepId)
    const by = step === undefined ? look.by : actorOf(step.action)
    return { ...look, by, answers: look.answers.map((answer) => ({ ...answer, steps: followed(answer.steps, by) })) }
  })
  return { ...document, steps, looks }
}

function followed(steps: readonly Step[], first: Position | undefined): readonly Step[] {
  let holder: Position | null | undefined = first
  return steps.map((step) => {
    const action = holder === undefined || holder === null ? step.action : playedBy(step.action, holder)
    holder = receiverOf(action)
    return action === step.action ? step : { ...step, action }
  })
}

export function playedBy<Action extends Step['action']>(action: Action, position: Position): Action {
  if (actorOf(action) === position) return action
  return 'from' in action ? { ...action, from: position } : { ...action, by: position }
}

const GOAL_CENTRE: Spot = { landmark: 'goal-centre', upMm: millimetres(0), rightMm: millimetres(0) }

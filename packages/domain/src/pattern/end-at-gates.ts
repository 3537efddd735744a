import type { Spot } from '../pitch'
import { millimetres } from '../quantities'
import { actorOf, placeOf, receiverOf } from './actions'
import type { Answer, BallAction, PatternDocument, Position, Step, Target } from './document'

/** What is there of a pattern: who plays, which places, and where a gate stands for a place that is not there. */
export type Remainder = {
  readonly isHere: (position: Position) => boolean
  readonly isIn: (spot: Spot) => boolean
  readonly gateFor: (spot: Spot) => Spot
}

export type EndedAtGates = {
  readonly document: PatternDocument
  /** Whom a gate stands for, in the order in which the ball would have come to them. */
  readonly gatesFor: readonly Position[]
}

/** Wide enough for a pass under no pressure, and the gate of the field check of the team reach (habit). */
const GATE_MM = millimetres(3000)

/**
 * A pattern as far as what is left of it goes, with a gate where the ball would go on: to somebody who is missing, or to a
 * place that is not there. A carry ends at the edge. Whatever nobody is left to do goes, looks without a single answer left
 * too. The document must have passed `checkShape`; what comes out passes it too.
 */
export function endAtGates(document: PatternDocument, left: Remainder): EndedAtGates {
  const cut = new Cut(document, left)
  const steps = cut.playedSteps(document.steps)
  const kept = new Set(steps.map((step) => step.stepId))
  const looks = document.looks
    .filter((look) => kept.has(look.stepId) && left.isHere(look.by))
    .map((look) => ({ ...look, answers: look.answers.map((answer) => answerLeft(answer, cut, kept, left)) }))
    .filter((look) => look.answers.every((answer) => answer.steps.length > 0))
  const stands = (placed: { readonly position: Position; readonly spot: Spot }) =>
    left.isHere(placed.position) && left.isIn(placed.spot)
  return {
    document: {
      ...document,
      positions: document.positions.filter(({ position }) => left.isHere(position)),
      inPossession: document.inPossession.filter(stands),
      onLoss: document.onLoss.filter(stands),
      obstacles: document.obstacles.filter((each) => left.isIn(each.spot)),
      targets: [...document.targets.filter((each) => left.isIn(each.spot)), ...cut.targets],
      steps,
      looks,
    },
    gatesFor: [...new Set(cut.gatesFor)],
  }
}

/** A sign that speaks of somebody missing is read off the gate's place: it speaks of nobody. */
function answerLeft(answer: Answer, cut: Cut, kept: ReadonlySet<string>, left: Remainder): Answer {
  const steps = cut.playedSteps(answer.steps)
  const whole =
    steps.length === answer.steps.length &&
    steps.every((step, index) => step.action.kind === answer.steps[index]?.action.kind)
  return {
    ...answer,
    about: answer.about !== null && left.isHere(answer.about) ? answer.about : null,
    steps,
    rejoins: whole && kept.has(answer.rejoins) ? answer.rejoins : 'exit',
  }
}

/** Gathers the gates while steps are gone through. */
class Cut {
  readonly targets: Target[] = []
  readonly gatesFor: Position[] = []
  readonly #taken: Set<string>

  constructor(
    private readonly document: PatternDocument,
    private readonly left: Remainder,
  ) {
    this.#taken = new Set(document.targets.map((target) => target.targetId))
  }

  playedSteps(steps: readonly Step[]): readonly Step[] {
    const played: Step[] = []
    for (const step of steps) {
      if (!this.left.isHere(actorOf(step.action))) break
      const receiver = receiverOf(step.action)
      const meeting = this.#meetingSpot(step)
      const runs = step.runs.filter((run) => this.left.isHere(run.position) && this.left.isIn(run.to))
      if ((receiver === null || this.left.isHere(receiver)) && this.left.isIn(meeting)) {
        played.push({ ...step, action: this.#withoutMissing(step.action), runs })
        continue
      }
      return [...played, { ...step, action: this.#ending(step, meeting), runs }]
    }
    return played
  }

  #ending(step: Step, meeting: Spot): BallAction {
    const { action } = step
    if (action.kind === 'carry' || action.kind === 'dribble-past') {
      return { kind: 'carry', by: action.by, to: this.left.gateFor(meeting), at: null }
    }
    let targetId = `gate-${step.stepId}`
    while (this.#taken.has(targetId)) targetId = `${targetId}-`
    this.#taken.add(targetId)
    this.targets.push({ targetId, kind: 'gate', spot: this.left.gateFor(meeting), widthMm: GATE_MM })
    const receiver = receiverOf(action)
    if (receiver !== null) this.gatesFor.push(receiver)
    return { kind: 'shot', by: actorOf(action), target: targetId }
  }

  /** An obstacle that is not there is carried at by nobody, and dribbled past by a carry. */
  #withoutMissing(action: BallAction): BallAction {
    const isThere = (id: string) =>
      this.document.obstacles.some((each) => each.obstacleId === id && this.left.isIn(each.spot))
    if (action.kind === 'carry' && action.at !== null && !isThere(action.at)) return { ...action, at: null }
    if (action.kind === 'dribble-past' && !isThere(action.past)) {
      return { kind: 'carry', by: action.by, to: action.to, at: null }
    }
    return action
  }

  /** Where the ball of a step is met: the place it names, the target, or where the receiver's last run ends. */
  #meetingSpot(step: Step): Spot {
    const { action } = step
    const named = placeOf(action)
    if (named !== null) return named
    if (action.kind === 'shot') return this.document.targets.find((each) => each.targetId === action.target)!.spot
    const receiver = receiverOf(action)
    const run = step.runs.find((each) => each.position === receiver)
    const before = this.#runsBefore(step).findLast((each) => each.position === receiver)
    return run?.to ?? before?.to ?? this.document.positions.find((each) => each.position === receiver)!.spot
  }

  /** For the step of an answer: the runs of the trunk before its look, and those of the answer's own steps before it. */
  #runsBefore(step: Step): Step['runs'] {
    const { looks, steps } = this.document
    const answers = looks.flatMap((look) => look.answers.map((answer) => ({ look, answer })))
    const of = answers.find(({ answer }) => answer.steps.includes(step))
    const trunk = steps.slice(
      0,
      steps.findIndex((each) => each.stepId === (of?.look.stepId ?? step.stepId)),
    )
    const own = of === undefined ? [] : of.answer.steps.slice(0, of.answer.steps.indexOf(step))
    return [...trunk, ...own].flatMap((each) => each.runs)
  }
}

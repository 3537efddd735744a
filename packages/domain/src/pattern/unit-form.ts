import type { Spot } from '../pitch'
import { assert, millimetres } from '../quantities'
import { actorOf, GOALKEEPER, placeOf, receiverOf } from './actions'
import type { Answer, Look, PatternDocument, Position, Step, Target } from './document'

export const UNIT_SIZES = [4, 5, 6] as const
export type UnitSize = (typeof UNIT_SIZES)[number]

/** A pattern for a few players: its own document, which draws, scripts and checks like any other. */
export type UnitForm = {
  readonly document: PatternDocument
  /** Who plays, in the order of the pattern; fewer than asked where the pattern places fewer. */
  readonly players: readonly Position[]
  /** Whom a gate stands for, in the order in which the ball would have come to them. */
  readonly gatesFor: readonly Position[]
}

/** Wide enough for a pass under no pressure, and the gate of the field check of the team reach (habit). */
const GATE_MM = millimetres(3000)

/**
 * A pattern for four to six players: its first steps, as far as these players carry them, and a gate where the ball would
 * go on to somebody who is missing. The players are those whom the ball comes to first; places left go to those who run or
 * answer a look, then in the order of the formation, from the back. Whatever nobody is left to do goes.
 * The document must have passed `checkShape`; the form passes it too.
 */
export function unitForm(document: PatternDocument, size: UnitSize): UnitForm {
  const players = choosePlayers(document, size)
  const gates = gatesIn(document)
  const steps = playedSteps(document.steps, players, gates)
  const kept = new Set(steps.map((step) => step.stepId))
  const looks = document.looks
    .filter((look) => kept.has(look.stepId) && players.has(look.by))
    .map((look) => ({ ...look, answers: look.answers.map((answer) => answerFor(answer, players, kept, gates)) }))
    .filter((look) => look.answers.every((answer) => answer.steps.length > 0))
  const isHere = ({ position }: { readonly position: Position }) => players.has(position)
  return {
    document: {
      ...document,
      positions: document.positions.filter(isHere),
      inPossession: document.inPossession.filter(isHere),
      onLoss: document.onLoss.filter(isHere),
      targets: [...document.targets, ...gates.made.map((gate) => gate.target)],
      steps,
      looks: looks.map((look) => aboutPlayers(look, players)),
    },
    players: document.positions.map((each) => each.position).filter((position) => players.has(position)),
    gatesFor: [...new Set(gates.made.map((gate) => gate.position))],
  }
}

function choosePlayers(document: PatternDocument, size: UnitSize): ReadonlySet<Position> {
  const chosen = new Set<Position>()
  const add = (position: Position | null) => {
    if (position !== null && chosen.size < size) chosen.add(position)
  }
  for (const step of document.steps) {
    add(actorOf(step.action))
    const receiver = receiverOf(step.action)
    add(receiver)
    // Behind the first player who is missing the ball goes no further: later receivers would stand about.
    if (receiver !== null && !chosen.has(receiver)) break
  }
  for (const step of document.steps) for (const run of step.runs) add(run.position)
  for (const look of document.looks) for (const answer of look.answers) add(answer.about)
  add(document.positions.some((each) => each.position === GOALKEEPER) ? GOALKEEPER : null)
  for (const { position } of document.positions) add(position)
  return chosen
}

type Gates = {
  readonly made: readonly { readonly position: Position; readonly target: Target }[]
  readonly at: (step: Step) => string
}

/** One gate for each step that would bring the ball to somebody missing, where they would have met it. */
function gatesIn(document: PatternDocument): Gates {
  const made: { readonly position: Position; readonly target: Target }[] = []
  const places = new Map(document.positions.map(({ position, spot }): [Position, Spot] => [position, spot]))
  const taken = new Set(document.targets.map((target) => target.targetId))
  return {
    made,
    at: (step) => {
      const position = receiverOf(step.action)
      assert(position !== null, 'only a ball to somebody is played through a gate instead')
      const run = step.runs.find((each) => each.position === position)
      const spot = placeOf(step.action) ?? run?.to ?? lastPlaceBefore(document, step, position) ?? places.get(position)
      assert(spot !== undefined, `${position} has a starting place`)
      let targetId = `gate-${step.stepId}`
      while (taken.has(targetId)) targetId = `${targetId}-`
      taken.add(targetId)
      made.push({ position, target: { targetId, kind: 'gate', spot, widthMm: GATE_MM } })
      return targetId
    },
  }
}

/** Where a player's last run of the trunk before a step ends; for the step of an answer, before its look. */
function lastPlaceBefore(document: PatternDocument, step: Step, position: Position): Spot | null {
  const look = document.looks.find((each) => each.answers.some((answer) => answer.steps.includes(step)))
  const until = document.steps.findIndex((each) => each.stepId === (look?.stepId ?? step.stepId))
  const runs = document.steps.slice(0, until).flatMap((each) => each.runs)
  return runs.findLast((run) => run.position === position)?.to ?? null
}

/** The steps as far as the players carry them; the ball to the first who is missing goes through a gate and ends it. */
function playedSteps(steps: readonly Step[], players: ReadonlySet<Position>, gates: Gates): readonly Step[] {
  const played: Step[] = []
  for (const step of steps) {
    if (!players.has(actorOf(step.action))) break
    const receiver = receiverOf(step.action)
    const runs = step.runs.filter((run) => players.has(run.position))
    if (receiver !== null && !players.has(receiver)) {
      const action = { kind: 'shot', by: actorOf(step.action), target: gates.at(step) } as const
      return [...played, { ...step, action, runs }]
    }
    played.push({ ...step, runs })
  }
  return played
}

function answerFor(answer: Answer, players: ReadonlySet<Position>, kept: ReadonlySet<string>, gates: Gates): Answer {
  const steps = playedSteps(answer.steps, players, gates)
  const cut = steps.length < answer.steps.length || steps.some((step) => step.action.kind === 'shot')
  return { ...answer, steps, rejoins: !cut && kept.has(answer.rejoins) ? answer.rejoins : 'exit' }
}

/** A sign that speaks of somebody missing is read off the gate's place: it speaks of nobody. */
function aboutPlayers(look: Look, players: ReadonlySet<Position>): Look {
  const aboutOf = (answer: Answer) => (answer.about !== null && players.has(answer.about) ? answer.about : null)
  return { ...look, answers: look.answers.map((answer) => ({ ...answer, about: aboutOf(answer) })) }
}

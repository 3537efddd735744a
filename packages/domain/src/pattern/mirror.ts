import type { Spot } from '../pitch'
import { mirrorSpot } from '../pitch'
import { unreachable } from '../quantities'
import type { Answer, BallAction, Look, PatternDocument, PlacedPosition, Position, Run, Step } from './document'

/** Roles that stand on a side: L or R before one of these. Any other name has no side and mirrors to itself. */
const SIDED_ROLES = ['B', 'CB', 'WB', 'M', 'CM', 'DM', 'AM', 'W', 'WM', 'F', 'CF', 'ST'] as const

const MIRRORED: ReadonlyMap<Position, Position> = new Map(
  SIDED_ROLES.flatMap((role): [Position, Position][] => [
    [`L${role}`, `R${role}`],
    [`R${role}`, `L${role}`],
  ]),
)

export function mirrorPosition(position: Position): Position {
  return MIRRORED.get(position) ?? position
}

/**
 * The same pattern on the other side: spots, sided positions and the side it is written for. Feet do not mirror (a step
 * says near or far foot), nor does any written sentence. Mirroring twice gives the document back.
 */
export function mirrorPattern(document: PatternDocument): PatternDocument {
  return {
    ...document,
    writtenFor: document.writtenFor === 'left' ? 'right' : 'left',
    positions: document.positions.map(mirrorPlaced),
    inPossession: document.inPossession.map(mirrorPlaced),
    onLoss: document.onLoss.map(mirrorPlaced),
    obstacles: document.obstacles.map((each) => ({ ...each, spot: mirrorSpot(each.spot) })),
    targets: document.targets.map((each) => ({ ...each, spot: mirrorSpot(each.spot) })),
    steps: document.steps.map(mirrorStep),
    looks: document.looks.map(mirrorLook),
  }
}

function mirrorPlaced(placed: PlacedPosition): PlacedPosition {
  return { position: mirrorPosition(placed.position), spot: mirrorSpot(placed.spot) }
}

function mirrorStep(step: Step): Step {
  return { ...step, action: mirrorAction(step.action), runs: step.runs.map(mirrorRun) }
}

function mirrorRun(run: Run): Run {
  return { ...run, position: mirrorPosition(run.position), to: mirrorSpot(run.to) }
}

function mirrorLook(look: Look): Look {
  return { ...look, by: mirrorPosition(look.by), answers: look.answers.map(mirrorAnswer) }
}

function mirrorAnswer(answer: Answer): Answer {
  return {
    ...answer,
    about: answer.about === null ? null : mirrorPosition(answer.about),
    steps: answer.steps.map(mirrorStep),
  }
}

function mirrorAction(action: BallAction): BallAction {
  switch (action.kind) {
    case 'pass':
    case 'set-back':
    case 'throw':
    case 'roll':
      return {
        ...action,
        from: mirrorPosition(action.from),
        to: mirrorPosition(action.to),
        into: mirrorInto(action.into),
      }
    case 'carry':
    case 'dribble-past':
      return { ...action, by: mirrorPosition(action.by), to: mirrorSpot(action.to) }
    case 'dummy':
      return { ...action, by: mirrorPosition(action.by), to: mirrorPosition(action.to) }
    case 'shot':
      return { ...action, by: mirrorPosition(action.by) }
    default:
      return unreachable(action)
  }
}

type Into = { readonly kind: 'feet' } | { readonly kind: 'space'; readonly spot: Spot }

function mirrorInto(into: Into): Into {
  return into.kind === 'feet' ? into : { kind: 'space', spot: mirrorSpot(into.spot) }
}

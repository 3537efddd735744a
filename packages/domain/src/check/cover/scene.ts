import { distance, type Point } from '../../geometry'
import { type Answer, type Branch, GOALKEEPER, type Look, type Position, type Step } from '../../pattern'
import { assert, millimetresOf, type Seconds, seconds } from '../../quantities'
import { playStep, type State } from '../play-step'
import type { TimedStep } from '../timed-step'
import { type PlacedPlayer, playStates } from '../timeline'
import { pointOnTrack } from '../tracks'
import type { CoverRules } from './cover-rules'

/** One thing the player on the ball can do, with its balls in time. */
export type Way = {
  readonly letter: string | null
  /** Null for the ball as drawn. */
  readonly answer: Answer | null
  readonly balls: readonly TimedStep[]
  readonly signSeconds: Seconds | null
  /** Every ball of it gets to where it is met. */
  readonly arrives: boolean
}

/** A lane to a position: its ball, or null where there is nothing to play; it may stop short. */
export type SignLane = { readonly ball: TimedStep; readonly arrives: boolean }

/**
 * Everything at the moment of a look: the player has the ball under control, the others are where the steps before have
 * brought them. Runs of the step that follows do not count yet, because each answer may have others.
 */
export type LookScene = {
  readonly look: Look
  readonly looker: Point
  readonly players: readonly PlacedPlayer[]
  readonly isRestart: boolean
  /**
   * In the order they are tried: the answers for a sign, then the ball as drawn, then what is kept for when all is shut, the
   * exit last. The step the look hangs on is what happens when no sign shows, as the script reads it, so it asks for none.
   */
  readonly ways: readonly Way[]
  readonly laneTo: (about: Position | null) => SignLane | null
  /** The team-mate of a two on one: the one named, else the nearest outfield player. */
  readonly mate: (about: Position | null) => Point | null
}

export function sceneOf(
  rules: CoverRules,
  trunk: readonly State[],
  branches: readonly Branch[],
  look: Look,
): LookScene {
  const leaves = rules.document.steps.findIndex((step) => step.stepId === look.stepId)
  const before = trunk[leaves]
  const drawn = trunk[leaves + 1]?.steps[leaves]
  assert(before !== undefined && drawn !== undefined, 'a look hangs on a step of the trunk')
  const lookAt = before.steps.at(-1)?.receivedAt ?? seconds(0)
  const players = [...before.tracks.values()].map((track) => ({
    position: track.position,
    point: pointOnTrack(track, lookAt),
  }))
  const placeOf = (position: Position) => players.find((each) => each.position === position)?.point
  const looker = placeOf(look.by)
  assert(looker !== undefined, 'whoever looks has a starting place')
  return {
    look,
    looker,
    players,
    isRestart: leaves === 0,
    ways: waysOf(rules, trunk, branches, look, leaves),
    laneTo: (about) => laneTo(rules, before, drawn, look.by, about),
    mate: (about) =>
      about === look.by ? null : ((about === null ? null : placeOf(about)) ?? nearestMate(look.by, looker, players)),
  }
}

function waysOf(
  rules: CoverRules,
  trunk: readonly State[],
  branches: readonly Branch[],
  look: Look,
  leaves: number,
): readonly Way[] {
  const own = branches.filter((branch) => branch.look.lookId === look.lookId)
  const answers = own.map((branch, index) => {
    const count = branch.answer.steps.length
    // One step further, because a dummy that follows changes how the ball before it is played.
    const steps = branch.document.steps.slice(0, leaves + count + 1)
    const played = playStates({ ...branch.document, steps }, rules.play).at(-1)!.steps
    return wayOf(rules, letterOf(index), branch.answer, played, leaves, count)
  })
  const drawn = wayOf(rules, null, null, trunk[leaves + 1]!.steps, leaves, 1)
  const isKept = (way: Way) => way.answer?.sign === 'all-shut'
  return [...answers.filter((way) => !isKept(way)), drawn, ...answers.filter(isKept)]
}

function wayOf(
  rules: CoverRules,
  letter: string | null,
  answer: Answer | null,
  played: readonly TimedStep[],
  leaves: number,
  count: number,
): Way {
  const balls = played.slice(leaves, leaves + count)
  // A dummy is no ball: the one it lets through was played before.
  const cue = played.slice(0, leaves).findLast((step) => step.kind !== 'dummy')
  const first = balls[0]
  const signSeconds = cue === undefined || first === undefined ? null : seconds(first.startsAt - cue.startsAt)
  return { letter, answer, balls, signSeconds, arrives: balls.every((ball) => arrives(rules, ball)) }
}

function arrives({ limits }: CoverRules, ball: TimedStep): boolean {
  return millimetresOf(ball.shortBy) <= millimetresOf(limits.shortMetres.value)
}

/** As the script letters them. */
function letterOf(index: number): string {
  return String.fromCharCode('A'.charCodeAt(0) + index)
}

/** The ball as drawn where it goes to that position (or none is named), else a plain pass to where they stand. */
function laneTo(
  rules: CoverRules,
  before: State,
  drawn: TimedStep,
  by: Position,
  about: Position | null,
): SignLane | null {
  if (drawn.flight.kind !== 'carried' && (about === null || about === drawn.receiver)) {
    return { ball: drawn, arrives: arrives(rules, drawn) }
  }
  if (about === null || about === by) return null
  const step: Step = {
    stepId: '',
    action: { kind: 'pass', from: by, to: about, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' },
    runs: [],
    point: '',
  }
  const ball = playStep(before, step, undefined, rules.play).steps.at(-1)!
  return { ball, arrives: arrives(rules, ball) }
}

function nearestMate(by: Position, looker: Point, players: readonly PlacedPlayer[]): Point | null {
  let nearest: Point | null = null
  let least = Number.POSITIVE_INFINITY
  for (const { position, point } of players) {
    if (position === by || position === GOALKEEPER) continue
    const away = millimetresOf(distance(point, looker))
    if (away >= least) continue
    least = away
    nearest = point
  }
  return nearest
}

import { distance, type Point } from '../../geometry'
import type { Answer, Position } from '../../pattern'
import { metres, millimetresOf, millisecondsOf, seconds } from '../../quantities'
import type { CoverRules } from './cover-rules'
import type { LookScene } from './scene'
import { shutsFrom } from './shut-places'

export type Sign = Answer['sign']

/** Which way the presser comes, seen from the player on the ball. */
export type Presser = 'inside' | 'outside' | 'straight'

/** What of a placement of X a sign is read from. */
export type Seen = {
  /** The X nearest to the player on the ball, if near enough to press; of two equally near the one from inside. */
  readonly presser: Presser | null
  /** How many X stand where they count for this sign: none, one, or more. */
  readonly counted: 0 | 1 | 2
}

export type SignRule = {
  /** Where an X counts; null where the sign does not count any. */
  readonly counts: ((scene: LookScene, about: Position | null, rules: CoverRules) => Counts) | null
  readonly shows: (seen: Seen) => boolean
}

/** Whether an X at a place counts. */
type Counts = (at: Point) => boolean

/** The closed set of signs, each in one place. X stand where the grid puts them; what they are about to do is not known. */
export const SIGN_RULES = {
  /** The presser stands further in, towards the middle of the pitch and beyond it, than the player on the ball. */
  'presser-from-inside': { counts: null, shows: ({ presser }) => presser === 'inside' },
  /** The presser stands further out, towards the touchline. */
  'presser-from-outside': { counts: null, shows: ({ presser }) => presser === 'outside' },
  /** An X can be at the named position within a second of running (by default at the player on the ball). */
  'presser-comes-at': {
    counts: (scene, about, rules) => comesAt(scene, about, rules),
    shows: ({ counted }) => counted > 0,
  },
  /** Nobody is near enough to the player on the ball to press them. */
  'presser-stays-off': {
    counts: (scene, _, rules) => within([scene.looker], rules),
    shows: ({ counted }) => counted === 0,
  },
  /**
   * An X would be at the ball to the named position in time (by default: at the ball as drawn). A ball that does not get
   * there is shut whoever stands where.
   */
  'lane-shut': {
    counts: (scene, about, rules) => laneShut(scene, about, rules),
    shows: ({ counted }) => counted > 0,
  },
  /** One X, and only one, is near the player on the ball or their team-mate, and these two are near each other. */
  'two-on-one': {
    counts: (scene, about, rules) => twoOnOne(scene, about, rules),
    shows: ({ counted }) => counted === 1,
  },
  /** Nothing else can be taken: such answers are tried after all others and after the ball as drawn, so nothing is left to see. */
  'all-shut': { counts: null, shows: () => true },
} satisfies Record<Sign, SignRule>

/** Which way an X at a place would come as presser, or null where they are too far off to press. */
export function presserFrom(scene: LookScene, place: Point, { coverLimits, hand }: CoverRules): Presser | null {
  const { pressMetres, straightMetres, middleMetres } = coverLimits
  const { looker } = scene
  if (millimetresOf(distance(place, looker)) >= millimetresOf(pressMetres.value)) return null
  // Measured to the right of the pattern's own side, so that the mirrored pattern rounds the same way.
  const lookerRight = millimetresOf(metres(hand * looker.y))
  const right = millimetresOf(metres(hand * (place.y - looker.y)))
  const isMiddle = Math.abs(lookerRight) < millimetresOf(middleMetres.value)
  if (isMiddle || Math.abs(right) < millimetresOf(straightMetres.value)) return 'straight'
  return right > 0 === lookerRight > 0 ? 'outside' : 'inside'
}

const nowhere: Counts = () => false

/** Near enough to press somebody who stands at one of these places. */
function within(places: readonly Point[], { coverLimits }: CoverRules): Counts {
  const near = millimetresOf(coverLimits.pressMetres.value)
  return (at) => places.some((place) => millimetresOf(distance(at, place)) < near)
}

/** On the run already: an X who comes needs no reaction, so one who reacts slowly does not stay off for that. */
function comesAt(scene: LookScene, about: Position | null, { opponents, coverLimits }: CoverRules): Counts {
  const goal = about === null ? scene.looker : scene.players.find((each) => each.position === about)?.point
  if (goal === undefined) return nowhere
  const limit = millisecondsOf(coverLimits.comesAtSeconds.value)
  return (at) => {
    const way = Math.max(0, distance(at, goal) - opponents.reach.value)
    return millisecondsOf(seconds(way / opponents.topSpeed.value)) <= limit
  }
}

function laneShut(scene: LookScene, about: Position | null, rules: CoverRules): Counts {
  const lane = scene.laneTo(about)
  if (lane === null) return nowhere
  return lane.arrives ? shutsFrom(lane.ball, rules) : () => true
}

function twoOnOne(scene: LookScene, about: Position | null, rules: CoverRules): Counts {
  const mate = scene.mate(about)
  const support = millimetresOf(rules.coverLimits.supportMetres.value)
  if (mate === null || millimetresOf(distance(mate, scene.looker)) >= support) return nowhere
  return within([scene.looker, mate], rules)
}

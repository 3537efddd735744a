import { distance, type Point } from '../../geometry'
import { ENGLISH } from '../../pattern'
import { nearestSpot } from '../../pitch'
import { millimetresOf } from '../../quantities'
import type { PlacedPlayer } from '../timeline'
import type { CoverRules } from './cover-rules'
import type { Hole, XCount, XCover } from './look-cover'
import type { LookScene } from './scene'

const COUNT_WORDS = { 1: 'one X', 2: 'two X', 3: 'three X' } satisfies Record<XCount, string>

/** As "Open from 87 % of the places where two X may stand; hole: X between CM and RCB." Never rounded up to 100 %. */
export function sayCover({ opponents, placements, open, perMille, holes }: Omit<XCover, 'sentence'>): string {
  const where = `of the places where ${COUNT_WORDS[opponents]} may stand`
  if (perMille === null) return `There is no room for ${COUNT_WORDS[opponents]} here.`
  if (open === placements) return `Open from all ${where}.`
  const percent = Math.floor(perMille / 10)
  const share = open === 0 ? 'none' : percent === 0 ? 'less than 1 %' : `${percent} %`
  return `Open from ${share} ${where}${sayHoles(holes)}.`
}

function sayHoles(holes: readonly Hole[]): string {
  if (holes.length === 0) return '; holes are few and scattered'
  return `; ${holes.length === 1 ? 'hole' : 'holes'}: ${holes.map((hole) => hole.words).join('; ')}`
}

/** As "X between CM and RCB and X beside LW", in the order of the places. */
export function sayHole(
  scene: Pick<LookScene, 'players'>,
  rules: Pick<CoverRules, 'space'>,
  places: readonly Point[],
): string {
  return places.map((place) => `X ${sayPlace(scene, rules, place)}`).join(' and ')
}

/** Nearer than these, players are better landmarks than lines (habits: common practice, no source). */
const BETWEEN_MM = 10_000
const BESIDE_MM = 5000

function sayPlace(scene: Pick<LookScene, 'players'>, rules: Pick<CoverRules, 'space'>, place: Point): string {
  const [first, second] = nearestTwo(scene.players, place)
  const away = first === undefined ? Number.POSITIVE_INFINITY : millimetresOf(distance(place, first.point))
  if (first && second && away <= BETWEEN_MM && isBetween(place, first.point, second.point)) {
    return `between ${first.position} and ${second.position}`
  }
  if (first && away <= BESIDE_MM) return `${sayDirection(first.point, place)} ${first.position}`
  return `near ${ENGLISH.landmarks[nearestSpot(rules.space, place).landmark]}`
}

function nearestTwo(players: readonly PlacedPlayer[], place: Point): readonly PlacedPlayer[] {
  const away = (player: PlacedPlayer) => millimetresOf(distance(player.point, place))
  return [...players].sort((a, b) => away(a) - away(b)).slice(0, 2)
}

/** Inside the circle that has the two as its ends: seen from the place they stand on different sides. */
function isBetween(place: Point, one: Point, other: Point): boolean {
  return (one.x - place.x) * (other.x - place.x) + (one.y - place.y) * (other.y - place.y) <= 0
}

function sayDirection(player: Point, place: Point): string {
  const up = place.x - player.x
  if (Math.abs(up) < Math.abs(place.y - player.y)) return 'beside'
  return up > 0 ? 'in front of' : 'behind'
}

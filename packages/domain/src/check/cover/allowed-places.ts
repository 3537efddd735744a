import { distance, type Point } from '../../geometry'
import { buildOutLine, landmarkPoint } from '../../pitch'
import { type Metres, metres, metresOf, millimetresOf, unreachable } from '../../quantities'
import { isInArea, ownArea } from '../areas'
import type { CoverRules } from './cover-rules'
import { type PlaceGrid, placeGrid } from './place-grid'
import type { LookScene } from './scene'

/**
 * Where an X may stand at a look: inside the space, in nobody's place, and at the restart itself where the law of the format
 * lets them wait. Once the ball is in play they may be anywhere.
 */
export function allowedPlaces(scene: LookScene, rules: CoverRules): PlaceGrid {
  const near = millimetresOf(rules.limits.placeMetres.value)
  const waits = scene.isRestart ? lawOf(rules, scene.looker) : () => true
  // Most players are far away in one direction already, which is cheap to see.
  const far = metresOf(near) + 1
  const isClear = (player: Point, place: Point) =>
    Math.abs(player.x - place.x) > far ||
    Math.abs(player.y - place.y) > far ||
    millimetresOf(distance(player, place)) >= near
  const isFree = (place: Point) => scene.players.every((player) => isClear(player.point, place)) && waits(place)
  return placeGrid(rules.space, rules.gridMm, rules.hand, isFree)
}

/**
 * Goal kick: outside the penalty area and behind the retreat and build-out lines. Hands: behind the build-out line. Free kick:
 * at the format's distance, and outside the penalty area where the ball lies in it. Throw-in: at the thrower's distance.
 */
function lawOf(rules: CoverRules, ball: Point): (place: Point) => boolean {
  const { document, format, limits } = rules
  const away = (least: Metres) => (place: Point) => millimetresOf(distance(ball, place)) >= millimetresOf(least)
  const behindBuildOut = behind(format.buildOutLine === null ? null : buildOutLine(rules.space))
  const outside = outsidePenaltyArea(rules)
  switch (document.restart) {
    case 'goal-kick': {
      const behindRetreat = behind(retreatLine(rules))
      return (place) => outside(place) && behindRetreat(place) && behindBuildOut(place)
    }
    case 'goalkeeper-hands':
      return behindBuildOut
    case 'free-kick': {
      const far = away(metresOf(format.restartDistanceMm.value))
      return outside(ball) ? far : (place) => far(place) && outside(place)
    }
    case 'throw-in':
      return away(limits.throwInDistanceMetres.value)
    case 'open-play':
      return () => true
    default:
      return unreachable(document.restart)
  }
}

function behind(line: Metres | null): (place: Point) => boolean {
  return line === null ? () => true : (place) => millimetresOf(metres(line - place.x)) <= 0
}

function outsidePenaltyArea({ format }: CoverRules): (place: Point) => boolean {
  if (format.penaltyArea === null) return () => true
  const area = ownArea(format.penaltyArea.value)
  return (place) => !isInArea(area, place)
}

/** The penalty area itself is no line across the pitch, so it gives none here. */
function retreatLine({ format, space }: CoverRules): Metres | null {
  switch (format.retreatLine.value) {
    case 'penalty-area':
      return null
    case 'halfway':
      return landmarkPoint(space, 'centre-mark')?.x ?? null
    case 'third':
      return metres(metresOf(space.lengthMm) / (space.covers === 'half' ? 1.5 : 3))
    default:
      return unreachable(format.retreatLine.value)
  }
}

import type { Format } from '../../formats'
import { distance, nearestInside, type Point, point } from '../../geometry'
import { actorOf, type PatternDocument, type Position, positionsNeeded } from '../../pattern'
import { buildOutLine, type Space, type Spot, spaceRectangle } from '../../pitch'
import { metres, metresOf } from '../../quantities'
import { ownArea } from '../areas'

/** Where an opponent may come from, and what put it there. */
export type StartPlace = {
  readonly at: Point
  /** A pole or opponent of the drawing, or null. */
  readonly obstacleId: string | null
  /** The player it stands nearest in front of, or null for a drawn one. */
  readonly near: Position | null
}

/** More places than this tell a coach nothing new, and their combinations cost (habit of the project). */
export const START_PLACES_MAX = 8
/** An opponent who waits for a player stands this far in front of them (habit). */
const IN_FRONT_METRES = 2
/** In open play nobody starts nearer to the ball than this (habit). */
const OPEN_PLAY_METRES = 4
/** Nearer than this two places are one (habit of the project). */
const APART_METRES = 1.5

/**
 * Where opponents may wait before the restart: the drawn opponents and poles, which say where a body is expected, then in
 * front of each player who takes part; each moved to the nearest place the law allows. Never more than eight.
 */
export function startPlaces(
  document: PatternDocument,
  space: Space,
  format: Format,
  place: (spot: Spot) => Point,
): readonly StartPlace[] {
  const lawful = lawfulFor(document, space, format, place)
  const drawn = [...document.obstacles]
    .filter((each) => each.kind !== 'cone')
    .sort((a, b) => Number(a.kind === 'pole') - Number(b.kind === 'pole'))
    .map((each): StartPlace => ({ at: lawful(place(each.spot)), obstacleId: each.obstacleId, near: null }))
  const spots = new Map(document.positions.map((each) => [each.position, each.spot]))
  const takes = document.steps[0] === undefined ? null : actorOf(document.steps[0].action)
  const front = positionsNeeded(document)
    .filter((position) => position !== takes)
    .map((position): StartPlace => {
      const at = place(spots.get(position)!)
      return { at: lawful(point(at.x + IN_FRONT_METRES, at.y)), obstacleId: null, near: position }
    })
  const kept: StartPlace[] = []
  for (const each of [...drawn, ...front]) {
    if (kept.every((other) => distance(other.at, each.at) >= APART_METRES)) kept.push(each)
  }
  return kept.slice(0, START_PLACES_MAX)
}

/** Moves a place to the nearest where the law lets an opponent wait for the restart. */
function lawfulFor(
  document: PatternDocument,
  space: Space,
  format: Format,
  place: (spot: Spot) => Point,
): (at: Point) => Point {
  const inside = spaceRectangle(space)
  const taker = document.steps[0] === undefined ? null : actorOf(document.steps[0].action)
  const ballSpot = document.positions.find((each) => each.position === taker)?.spot
  const ball = ballSpot === undefined ? null : place(ballSpot)
  const keptBack = document.restart === 'goal-kick' || document.restart === 'goalkeeper-hands'
  const line = keptBack && format.buildOutLine !== null ? buildOutLine(space) : null
  const area =
    document.restart === 'goal-kick' && format.penaltyArea !== null ? ownArea(format.penaltyArea.value) : null
  const away =
    document.restart === 'free-kick' || document.restart === 'throw-in'
      ? metresOf(format.restartDistanceMm.value)
      : metres(OPEN_PLAY_METRES)
  return (at) => {
    const within = nearestInside(inside, at)
    const behind = line === null ? within : point(Math.max(within.x, line), within.y)
    const outside = area !== null && behind.x < area.far && behind.y > area.left && behind.y < area.right
    const law = outside && area !== null ? point(area.far, behind.y) : behind
    return ball === null || distance(ball, law) >= away ? law : nearestInside(inside, pushedFrom(ball, law, away))
  }
}

function pushedFrom(ball: Point, at: Point, away: number): Point {
  const off = distance(ball, at)
  if (off === 0) return point(ball.x + away, ball.y)
  const share = away / off
  return point(ball.x + (at.x - ball.x) * share, ball.y + (at.y - ball.y) * share)
}

import type { Point } from '../geometry'
import type { Obstacle } from '../pattern'
import type { CheckContext } from './context'

export type DrawnOpponent = { readonly obstacle: Obstacle; readonly at: Point }

/** The live opponents drawn, where they stand until the ball is played. Poles and cones do not think. */
export function drawnOpponents({ document, place }: CheckContext): readonly DrawnOpponent[] {
  return document.obstacles
    .filter((each) => each.kind === 'opponent')
    .map((obstacle) => ({ obstacle, at: place(obstacle.spot) }))
}

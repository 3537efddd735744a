import type { ActivityKind } from '../curriculum'
import { habit, type Sourced } from '../quantities'

/** Square metres a child has in one kind of activity; below `min` the plan says so. Common practice, no source. */
export type AreaSize = Sourced<{ readonly min: number; readonly usual: number; readonly max: number }>

export const AREA_SIZES = {
  rondo: habit({ min: 12, usual: 16, max: 20 }),
  'keep-ball': habit({ min: 25, usual: 35, max: 45 }),
  'small-sided-game': habit({ min: 55, usual: 70, max: 85 }),
  'conditioned-game': habit({ min: 55, usual: 70, max: 85 }),
  'build-out-game': habit({ min: 80, usual: 95, max: 110 }),
  pattern: habit({ min: 25, usual: 80, max: 110 }),
} as const satisfies Record<ActivityKind, AreaSize>

/** A way to walk between two areas played in at the same time. */
export const WALKING_LANE_MM = habit(2000)
/** How much longer than wide a game is played: four to three. A rondo is square. */
export const GAME_SHAPE = habit({ long: 4, short: 3 })

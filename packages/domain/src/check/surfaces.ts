import type { MetresPerSecondSquared, Sourced } from '../quantities'
import { habit, metresPerSecondSquared } from '../quantities'

export const SURFACES = ['hall', 'fast', 'normal', 'slow', 'bad', 'heavy'] as const
export type Surface = (typeof SURFACES)[number]

const BALL_ROLL = 'FIFA Quality Programme for Football Turf, ball roll 4–10 m from a 1 m ramp at 45°, by a = 0.6·g·h/d'

/**
 * How fast a rolling ball loses speed, taken as constant. Fast, normal and slow lie inside the band the turf standard allows
 * (0.59 to 1.47 m/s²); long or wet grass is outside any standard, and so is a smooth hall floor with a futsal ball.
 */
export const BALL_DECELERATION = {
  hall: habit(metresPerSecondSquared(0.5)),
  fast: { value: metresPerSecondSquared(0.6), kind: 'published', source: BALL_ROLL },
  normal: { value: metresPerSecondSquared(0.8), kind: 'published', source: BALL_ROLL },
  slow: { value: metresPerSecondSquared(1.2), kind: 'published', source: BALL_ROLL },
  bad: habit(metresPerSecondSquared(1.5)),
  heavy: habit(metresPerSecondSquared(2.2)),
} satisfies Record<Surface, Sourced<MetresPerSecondSquared>>

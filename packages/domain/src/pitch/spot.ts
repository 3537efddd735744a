import type { Millimetres } from '../quantities'

export type Side = 'left' | 'right'

/**
 * Points a coach can find on foot. "Own" is the end the team builds out from; left and right are as the team attacks.
 * A landmark with a side carries it as its last word, so that mirroring is a change of that word.
 */
export const LANDMARKS = [
  'goal-centre',
  'goal-post-left',
  'goal-post-right',
  'goal-area-corner-left',
  'goal-area-corner-right',
  'goal-area-edge-left',
  'goal-area-edge-right',
  'goal-area-top',
  'penalty-mark',
  'penalty-area-corner-left',
  'penalty-area-corner-right',
  'penalty-area-edge-left',
  'penalty-area-edge-right',
  'penalty-area-top',
  'penalty-arc-top',
  'build-out-line-centre',
  'build-out-line-left',
  'build-out-line-right',
  'corner-left',
  'corner-right',
  'centre-mark',
  'halfway-left',
  'halfway-right',
  'far-goal-centre',
  'far-goal-post-left',
  'far-goal-post-right',
  'far-goal-area-corner-left',
  'far-goal-area-corner-right',
  'far-goal-area-edge-left',
  'far-goal-area-edge-right',
  'far-goal-area-top',
  'far-penalty-mark',
  'far-penalty-area-corner-left',
  'far-penalty-area-corner-right',
  'far-penalty-area-edge-left',
  'far-penalty-area-edge-right',
  'far-penalty-area-top',
  'far-penalty-arc-top',
  'far-build-out-line-centre',
  'far-build-out-line-left',
  'far-build-out-line-right',
  'far-corner-left',
  'far-corner-right',
] as const
export type Landmark = (typeof LANDMARKS)[number]

/** A landmark plus an offset: how every starting place is stored, so that a pattern moves with the pitch. */
export type Spot = {
  readonly landmark: Landmark
  /** Up the pitch, towards the opponents' goal, is positive. */
  readonly upMm: Millimetres
  /** To the right as the team attacks is positive. */
  readonly rightMm: Millimetres
}

import type { Landmark } from './spot'

/** What a landmark's distance from its goal line is measured by. */
export type Depth =
  | 'goal-line'
  | 'goal-area'
  | 'penalty-mark'
  | 'penalty-area'
  | 'penalty-arc'
  | 'build-out-line'
  | 'halfway'

/** What a landmark's distance from the middle of the pitch is measured by. */
export type Breadth = 'axis' | 'goal' | 'goal-area' | 'penalty-area' | 'touchline'

/** A landmark as a crossing of two measures; `hand` is −1 on the left, 1 on the right, 0 in the middle. */
export type LandmarkPlace = {
  readonly end: 'own' | 'far'
  readonly depth: Depth
  readonly breadth: Breadth
  readonly hand: -1 | 0 | 1
}

type Pair<Name extends string> = Readonly<Record<`${Name}-left` | `${Name}-right`, LandmarkPlace>>

function pair<Name extends string>(name: Name, end: 'own' | 'far', depth: Depth, breadth: Breadth): Pair<Name> {
  return {
    [`${name}-left`]: { end, depth, breadth, hand: -1 },
    [`${name}-right`]: { end, depth, breadth, hand: 1 },
  } as Pair<Name>
}

function middle(end: 'own' | 'far', depth: Depth): LandmarkPlace {
  return { end, depth, breadth: 'axis', hand: 0 }
}

/** Where every landmark lies, in words of the format; the measures come from the space. */
export const LANDMARK_PLACES = {
  'goal-centre': middle('own', 'goal-line'),
  ...pair('goal-post', 'own', 'goal-line', 'goal'),
  ...pair('goal-area-corner', 'own', 'goal-area', 'goal-area'),
  ...pair('goal-area-edge', 'own', 'goal-line', 'goal-area'),
  'goal-area-top': middle('own', 'goal-area'),
  'penalty-mark': middle('own', 'penalty-mark'),
  ...pair('penalty-area-corner', 'own', 'penalty-area', 'penalty-area'),
  ...pair('penalty-area-edge', 'own', 'goal-line', 'penalty-area'),
  'penalty-area-top': middle('own', 'penalty-area'),
  'penalty-arc-top': middle('own', 'penalty-arc'),
  'build-out-line-centre': middle('own', 'build-out-line'),
  ...pair('build-out-line', 'own', 'build-out-line', 'touchline'),
  ...pair('corner', 'own', 'goal-line', 'touchline'),
  'centre-mark': middle('own', 'halfway'),
  ...pair('halfway', 'own', 'halfway', 'touchline'),
  'far-goal-centre': middle('far', 'goal-line'),
  ...pair('far-goal-post', 'far', 'goal-line', 'goal'),
  ...pair('far-goal-area-corner', 'far', 'goal-area', 'goal-area'),
  ...pair('far-goal-area-edge', 'far', 'goal-line', 'goal-area'),
  'far-goal-area-top': middle('far', 'goal-area'),
  'far-penalty-mark': middle('far', 'penalty-mark'),
  ...pair('far-penalty-area-corner', 'far', 'penalty-area', 'penalty-area'),
  ...pair('far-penalty-area-edge', 'far', 'goal-line', 'penalty-area'),
  'far-penalty-area-top': middle('far', 'penalty-area'),
  'far-penalty-arc-top': middle('far', 'penalty-arc'),
  'far-build-out-line-centre': middle('far', 'build-out-line'),
  ...pair('far-build-out-line', 'far', 'build-out-line', 'touchline'),
  ...pair('far-corner', 'far', 'goal-line', 'touchline'),
} satisfies Readonly<Record<Landmark, LandmarkPlace>>

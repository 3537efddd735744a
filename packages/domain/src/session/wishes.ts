import type { ActivityKind } from '../curriculum'
import {
  type AgeDefaults,
  CHILDREN_A_BALL_MAX,
  GAME_SHARE_PERMILLE_MIN,
  THEME_SHARE_PERMILLE_MAX,
} from './age-defaults'
import { planNote } from './notes'
import type { PlanNote, PlannedActivity } from './plan'

const IS_GAME = {
  'small-sided-game': true,
  'conditioned-game': true,
  'build-out-game': true,
  rondo: false,
  'keep-ball': false,
  pattern: false,
} as const satisfies Record<ActivityKind, boolean>

/** Share of playing time (pauses left out) spent in games, in whole permille. */
export function gameSharePermille(activities: readonly PlannedActivity[]): number {
  return sharePermille(activities, (activity) => IS_GAME[activity.kind])
}

function sharePermille(activities: readonly PlannedActivity[], counts: (activity: PlannedActivity) => boolean): number {
  const sum = (list: readonly PlannedActivity[]) => list.reduce((total, activity) => total + activity.minutes, 0)
  const all = sum(activities)
  return all === 0 ? 0 : Math.floor((sum(activities.filter(counts)) * 1000) / all)
}

/** Names each wish of the age that this plan breaks; silent about those it keeps. */
export function wishNotes(
  activities: readonly PlannedActivity[],
  longestWaitSeconds: number,
  balls: number,
  children: number,
  age: AgeDefaults,
): readonly PlanNote[] {
  if (activities.length === 0) return []
  const waitLimit = age.longestWaitSeconds.value
  const games = gameSharePermille(activities)
  const theme = sharePermille(activities, (activity) => activity.kind === 'pattern')
  const ballsWished = Math.ceil(children / CHILDREN_A_BALL_MAX.value)
  return [
    ...(longestWaitSeconds > waitLimit ? [planNote('wish-wait', longestWaitSeconds, waitLimit)] : []),
    ...(games < GAME_SHARE_PERMILLE_MIN.value ? [planNote('wish-game-share', games)] : []),
    ...(theme > THEME_SHARE_PERMILLE_MAX.value ? [planNote('wish-theme-share', theme)] : []),
    ...(balls < ballsWished ? [planNote('wish-balls', balls, ballsWished)] : []),
  ]
}

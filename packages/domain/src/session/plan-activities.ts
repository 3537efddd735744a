import type { ActivityKind, ModelActivity, ModelSession, Stage } from '../curriculum'
import { type AgeDefaults, THEME_SHARE_PERMILLE_MAX } from './age-defaults'
import { ACTIVITY_MINUTES_MIN, activitiesThatFit, playingMinutes, type TimeClaim } from './fill-slot'

/** One activity of the evening before it has minutes, groups and a place. */
export type WantedActivity = Omit<ModelActivity, 'minutes'> & { readonly claim: TimeClaim }

export type WantedActivities = {
  readonly activities: readonly WantedActivity[]
  readonly leftOut: readonly string[]
}

/** What is left out first when time or adults are short; the theme and the last game stay. */
const LEFT_OUT_FIRST: readonly ActivityKind[] = [
  'rondo',
  'keep-ball',
  'small-sided-game',
  'build-out-game',
  'conditioned-game',
  'pattern',
]

/** Shares of playing time without a model session: games more than half, the theme a third at most. Common practice, no source. */
const WEIGHTS = {
  'small-sided-game': 28,
  rondo: 14,
  'keep-ball': 14,
  pattern: 30,
  'build-out-game': 28,
  'conditioned-game': 28,
} as const satisfies Record<ActivityKind, number>

const TITLES = {
  'small-sided-game': 'Small-sided game',
  rondo: 'Rondo',
  'keep-ball': 'Keep-ball',
  pattern: 'Pattern',
  'build-out-game': 'Build-out game',
  'conditioned-game': 'Game with a point',
} as const satisfies Record<ActivityKind, string>

/**
 * The activities of the evening in order: the model session's with the proportions its writer chose, or the habit of the age.
 * What time and adults do not allow is left out. Without a stage that can be run, the theme becomes a game with a point.
 */
export function wantedActivities(
  model: ModelSession | null,
  stage: Stage | null,
  age: AgeDefaults,
  adults: number,
  slot: number,
): WantedActivities {
  const written = model && model.activities.length > 0 ? model.activities : habitActivities(age, stage !== null)
  const isHabit = written !== model?.activities
  const limit = adults >= 2 ? age.activitiesWithTwo.value : age.activitiesAlone.value
  const room = activitiesThatFit(slot, adults, Math.min(limit, written.length))
  const kept = keepMost(written, room)
  const activities = kept.map((activity) => runnable(activity, stage))
  const leftOut = written.filter((activity) => !kept.includes(activity)).map((activity) => activity.title)
  return {
    activities: activities.map((activity) => ({
      ...activity,
      claim: claimOf(activity, isHabit || leftOut.length > 0, age, playingMinutes(slot, adults, kept.length)),
    })),
    leftOut,
  }
}

function habitActivities(age: AgeDefaults, hasStage: boolean): readonly ModelActivity[] {
  const kinds = age.order.value.filter((kind) => hasStage || kind !== 'pattern')
  return kinds.map((kind, index) => ({
    activityId: `habit-${index + 1}`,
    kind,
    title: kind === 'pattern' ? '' : TITLES[kind],
    minutes: WEIGHTS[kind] as ModelActivity['minutes'],
    stageId: null,
    conditions: [],
    points: [],
  }))
}

function keepMost(written: readonly ModelActivity[], room: number): readonly ModelActivity[] {
  let kept = written
  while (kept.length > room) {
    const last = kept.at(-1)
    const kind = LEFT_OUT_FIRST.find((each) => kept.some((activity) => activity.kind === each && activity !== last))
    const out = kept.find((activity) => activity.kind === kind && activity !== last) ?? last
    kept = kept.filter((activity) => activity !== out)
  }
  return kept
}

function runnable(activity: ModelActivity, stage: Stage | null): Omit<ModelActivity, 'minutes'> & { minutes: number } {
  if (activity.kind !== 'pattern') return { ...activity, stageId: null }
  if (stage) return { ...activity, stageId: stage.stageId, title: activity.title || stage.title }
  return {
    ...activity,
    kind: 'conditioned-game',
    title: TITLES['conditioned-game'],
    stageId: null,
    conditions: [
      'Every restart is the goalkeeper’s, or the last player’s.',
      'First to three goals, then change the teams.',
    ],
    points: [],
  }
}

type Timed = { readonly kind: ActivityKind; readonly title: string; readonly minutes: number }

/** The theme keeps to its minutes and its share by habit, unless the proportions are those a model session's writer chose. */
function claimOf(activity: Timed, isOurs: boolean, age: AgeDefaults, playing: number): TimeClaim {
  const { kind, title, minutes } = activity
  const free = { weight: minutes, minMinutes: ACTIVITY_MINUTES_MIN.value, maxMinutes: playing, title }
  if (kind !== 'pattern' || !isOurs) return free
  const { min, max } = age.themeMinutes.value
  const share = Math.floor((playing * THEME_SHARE_PERMILLE_MAX.value) / 1000)
  return { ...free, minMinutes: Math.min(min, share), maxMinutes: Math.min(max, share) }
}

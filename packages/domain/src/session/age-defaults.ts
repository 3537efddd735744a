import type { ActivityKind } from '../curriculum'
import { habit, type Sourced } from '../quantities'

export const AGE_BANDS = ['U8', 'U10', 'U12'] as const
export type AgeBand = (typeof AGE_BANDS)[number]

/** What an evening of one age usually looks like. All of it common practice without a source; a club may differ. */
export type AgeDefaults = {
  /** Activities one evening holds, by the number of adults. */
  readonly activitiesAlone: Sourced<number>
  readonly activitiesWithTwo: Sourced<number>
  readonly slotMinutes: Sourced<{ readonly min: number; readonly max: number }>
  readonly themeMinutes: Sourced<{ readonly min: number; readonly max: number }>
  readonly longestWaitSeconds: Sourced<number>
  /** Largest number of children in one game. */
  readonly gamePlayersMax: Sourced<number>
  /** One attempt with the walk back. */
  readonly secondsARound: Sourced<number>
  /** The order of an evening without a model session: a game first, for the young want to play. */
  readonly order: Sourced<readonly ActivityKind[]>
}

const GAME_FIRST = ['small-sided-game', 'rondo', 'pattern', 'conditioned-game'] as const

export const AGE_DEFAULTS = {
  U8: {
    activitiesAlone: habit(3),
    activitiesWithTwo: habit(3),
    slotMinutes: habit({ min: 45, max: 60 }),
    themeMinutes: habit({ min: 12, max: 15 }),
    longestWaitSeconds: habit(45),
    gamePlayersMax: habit(8),
    secondsARound: habit(60),
    order: habit(['small-sided-game', 'pattern', 'conditioned-game']),
  },
  U10: {
    activitiesAlone: habit(3),
    activitiesWithTwo: habit(4),
    slotMinutes: habit({ min: 60, max: 75 }),
    themeMinutes: habit({ min: 15, max: 25 }),
    longestWaitSeconds: habit(60),
    gamePlayersMax: habit(10),
    secondsARound: habit(60),
    order: habit(GAME_FIRST),
  },
  U12: {
    activitiesAlone: habit(4),
    activitiesWithTwo: habit(4),
    slotMinutes: habit({ min: 75, max: 90 }),
    themeMinutes: habit({ min: 20, max: 30 }),
    longestWaitSeconds: habit(90),
    gamePlayersMax: habit(12),
    secondsARound: habit(60),
    order: habit(GAME_FIRST),
  },
} as const satisfies Record<AgeBand, AgeDefaults>

/** The largest share of ball time one theme takes, in permille. */
export const THEME_SHARE_PERMILLE_MAX = habit(400)
/** The least share of playing time that is a game, in permille. */
export const GAME_SHARE_PERMILLE_MIN = habit(500)
export const CHILDREN_A_BALL_MAX = habit(5)

/** The band whose habits fit an age group such as "U9", "U10 girls" or "9v9 U11–U12": the oldest age named decides. */
export function ageBand(ageGroup: string): AgeBand {
  const ages = [...ageGroup.matchAll(/[Uu]-?(\d{1,2})/g)].map((match) => Number(match[1]))
  if (ages.length === 0) return 'U10'
  const oldest = Math.max(...ages)
  return oldest <= 8 ? 'U8' : oldest <= 10 ? 'U10' : 'U12'
}

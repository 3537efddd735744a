import type { VersionContent } from '../curriculum'
import { assert, compareIds, habit } from '../quantities'
import { DAYS_A_STAGE, progressionsInOrder } from '../session/choose-stage'

export type StageToPlan = {
  readonly stageId: string
  /** Minutes of the theme on an evening that trains it. */
  readonly minutes: number
  /** Separate days on which it was practised, or is planned already by an older version. */
  readonly days: number
}

export type DateToPlan = { readonly dateId: string; readonly localDate: string }
export type PlannedStage = { readonly dateId: string; readonly stageId: string; readonly minutes: number }

/** Minutes of a theme where no model session says how long it is. */
export const THEME_MINUTES = habit(20)

/**
 * Which stage is planned on which date: in the order of the progressions each stage gets separate dates until it has
 * three (habit: common practice, no source); when all have theirs, they come round again one date each. It is how a
 * phone chooses the evening's stage, looked at from the start of the season. One stage a date.
 */
export function planStages(stages: readonly StageToPlan[], dates: readonly DateToPlan[]): readonly PlannedStage[] {
  if (stages.length === 0) return []
  const days = stages.map((stage) => stage.days)
  assert(
    days.every((count) => Number.isSafeInteger(count) && count >= 0),
    'days are counted in whole numbers',
  )
  let again = 0
  return inOrder(dates).map(({ dateId }) => {
    let next = days.findIndex((count) => count < DAYS_A_STAGE.value)
    if (next < 0) {
      next = again
      again = (again + 1) % stages.length
    }
    days[next] = days[next]! + 1
    const { stageId, minutes } = stages[next]!
    return { dateId, stageId, minutes }
  })
}

function inOrder(dates: readonly DateToPlan[]): readonly DateToPlan[] {
  return [...dates].sort((a, b) => compareIds(a.localDate, b.localDate) || compareIds(a.dateId, b.dateId))
}

/** The stages of a version in the order in which they are trained, each with the minutes of its model session. */
export function stagesToPlan(content: VersionContent, days: ReadonlyMap<string, number>): readonly StageToPlan[] {
  return progressionsInOrder(content.progressions)
    .flatMap(({ stages }) => stages)
    .map(({ stageId }) => ({ stageId, minutes: themeMinutes(content, stageId), days: days.get(stageId) ?? 0 }))
}

function themeMinutes(content: VersionContent, stageId: string): number {
  const minutesFor = (wanted: string | null) =>
    content.modelSessions
      .map(({ activities }) =>
        activities
          .filter((activity) => activity.kind === 'pattern' && activity.stageId === wanted)
          .reduce((sum, activity) => sum + activity.minutes, 0),
      )
      .find((sum) => sum > 0)
  return minutesFor(stageId) ?? minutesFor(null) ?? THEME_MINUTES.value
}

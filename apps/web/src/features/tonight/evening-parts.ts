import type { PlannedActivity, PlannedPause, SessionPlan } from '@espalier/domain/session'

export type EveningPart =
  | { readonly kind: 'activity'; readonly startMinute: number; readonly activity: PlannedActivity }
  | { readonly kind: 'pause'; readonly startMinute: number; readonly pause: PlannedPause }

/** Activities and pauses in the order they come. */
export function eveningParts(plan: SessionPlan): readonly EveningPart[] {
  const activities = plan.activities.map(
    (activity): EveningPart => ({ kind: 'activity', startMinute: activity.startMinute, activity }),
  )
  const pauses = plan.pauses.map((pause): EveningPart => ({ kind: 'pause', startMinute: pause.startMinute, pause }))
  return [...activities, ...pauses].toSorted((a, b) => a.startMinute - b.startMinute)
}

/** The clock so many minutes after HH:MM, over midnight too. */
export function clockAfter(localStart: string, minutes: number): string {
  const [hours = 0, past = 0] = localStart.split(':').map(Number)
  const all = (hours * 60 + past + minutes) % (24 * 60)
  return `${twoDigits(Math.floor(all / 60))}:${twoDigits(all % 60)}`
}

function twoDigits(value: number): string {
  return String(value).padStart(2, '0')
}

/** The activity that trains tonight's stage; null on an evening of games only. */
export function patternActivity(plan: SessionPlan): PlannedActivity | null {
  return plan.activities.find((activity) => activity.kind === 'pattern' && activity.lineups !== null) ?? null
}

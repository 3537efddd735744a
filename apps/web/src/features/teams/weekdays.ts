import { teamsMessage } from '../../messages/teams'

/** Monday is 1, as in ISO 8601. */
export const WEEKDAYS = [1, 2, 3, 4, 5, 6, 7] as const
export type Weekday = (typeof WEEKDAYS)[number]

const WORDS = {
  1: 'weekday1',
  2: 'weekday2',
  3: 'weekday3',
  4: 'weekday4',
  5: 'weekday5',
  6: 'weekday6',
  7: 'weekday7',
} as const satisfies Record<Weekday, string>

export function weekdayName(weekday: number): string {
  return teamsMessage(WORDS[weekday as Weekday])
}

import { derivedId } from '../clock/derived-id'

/** Always the same: the demo club is found again at each start, and an interrupted making is taken up where it ended. */
export function demoId(...parts: readonly string[]): string {
  return derivedId('demo club', ...parts)
}

export const DEMO_CLUB_ID = demoId('club')

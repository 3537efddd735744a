/** Where a coach goes next from tonight, by how far the evening has come. */
export type NextPress = 'set-out' | 'line-ups' | 'plan' | 'report'

export type Progress = {
  readonly stops: number
  readonly putDown: number
  readonly hasPattern: boolean
  readonly isOver: boolean
}

/** Before: set out. While it runs: who plays where, or the games. Once it is over: the report. */
export function nextPress({ stops, putDown, hasPattern, isOver }: Progress): NextPress {
  if (isOver) return 'report'
  if (putDown < stops) return 'set-out'
  return hasPattern ? 'line-ups' : 'plan'
}

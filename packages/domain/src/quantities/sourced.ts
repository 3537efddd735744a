/** Where a number is from; shown to people beside the number. */
export type SourceKind = 'published' | 'study' | 'habit' | 'club' | 'memory' | 'computed'

/** A number with its provenance. `source` names the law, table or paper; for a habit it says "common practice, no source". */
export type Sourced<Value> = {
  readonly value: Value
  readonly kind: SourceKind
  readonly source: string
}

export const HABIT = 'common practice, no source'

export function habit<Value>(value: Value): Sourced<Value> {
  return { value, kind: 'habit', source: HABIT }
}

export function published<Value>(value: Value, source: string): Sourced<Value> {
  return { value, kind: 'published', source }
}

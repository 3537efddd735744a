const NUMBER = /^-?\d{1,9}([.,]\d{1,6})?$/

/** The number a person typed, with a point or a comma; null where it is none. Never a guess. */
export function numberFromText(text: string): number | null {
  const trimmed = text.trim()
  return NUMBER.test(trimmed) ? Number(trimmed.replace(',', '.')) : null
}

/** Metres as people say them: whole where they are whole, else with so many decimals. */
export function metresText(lengthMm: number, decimals = 1): string {
  const scale = 10 ** decimals
  return String(Math.round((lengthMm / 1000) * scale) / scale)
}

/** A measure that a line never breaks, so that no unit stands alone at the start of the next. */
export function unbroken(measure: string): string {
  return measure.replaceAll(' ', '\u00a0')
}

/** Metres as people say them: whole where they are whole, else with so many decimals. */
export function metresText(lengthMm: number, decimals = 1): string {
  const scale = 10 ** decimals
  return String(Math.round((lengthMm / 1000) * scale) / scale)
}

/** Orders strings by UTF-16 code unit: the same everywhere, unlike anything that asks a locale. */
export function compareIds(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0
}

/** Enough of a hash to tell it from its neighbours by eye; the whole of it stands where it is checked. */
export function shortHash(hash: string): string {
  return `${hash.slice(0, 8)}…${hash.slice(-4)}`
}

export type KitText = { readonly text: string; readonly tag: string }

/** A kit and for how long it is the answer: while the record book has this size and the clock stands between both. */
export type KeptKit = KitText & { readonly bookSize: number; readonly from: number; readonly until: number }

// Some hundred teams of a busy evening, a few dozen kilobytes each.
const KEPT_MAX = 300
const kept = new Map<string, KeptKit>()

/**
 * The kit made before, if nothing can have changed since. Whatever a kit shows is changed by commands that write to the
 * club's record book, so an equal size means equal contents; the rest is the clock: dates that end or come near, and
 * the midnight at which another version may come into force.
 */
export function findKept(clubId: string, teamId: string, bookSize: number, now: number): KitText | null {
  const kit = kept.get(`${clubId}/${teamId}`)
  if (kit === undefined) return null
  return kit.bookSize === bookSize && kit.from <= now && now < kit.until ? kit : null
}

export function keepKit(clubId: string, teamId: string, kit: KeptKit): void {
  const name = `${clubId}/${teamId}`
  const [oldest] = kept.keys()
  kept.delete(name)
  if (kept.size >= KEPT_MAX && oldest !== undefined) kept.delete(oldest)
  kept.set(name, kit)
}

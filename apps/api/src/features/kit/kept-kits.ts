export type KitText = { readonly text: string; readonly tag: string }

/** A kit and for how long it is the answer: while the record book has this size and the clock stands between both. */
export type KeptKit = KitText & { readonly bookSize: number; readonly from: number; readonly until: number }

// Some hundred teams of a busy evening, a few dozen kilobytes each.
const KEPT_MAX = 300

/** Names of children lie open in a kept kit: long enough for phones that open together, and no longer (habit). */
export const KEPT_MILLISECONDS = 15 * 60_000

type Kept = KeptKit & { readonly forget: NodeJS.Timeout }

const kept = new Map<string, Kept>()

/**
 * The kit made before, if nothing can have changed since. Whatever a kit shows is changed by commands that write to the
 * club's record book, so an equal size means equal contents; the rest is the clock: dates that end or come near, and
 * the midnight at which another version may come into force.
 *
 * The rule for names: whatever takes a child's name away, by leaving or by erasure, is such a command and writes its
 * entry in the same transaction, so that the very next kit is made anew. What an operator erases past the commands is
 * gone from here after a quarter of an hour, and so is every name, asked for or not.
 */
export function findKept(clubId: string, teamId: string, bookSize: number, now: number): KitText | null {
  const kit = kept.get(`${clubId}/${teamId}`)
  if (kit === undefined) return null
  const isYoung = now < kit.from + KEPT_MILLISECONDS
  return kit.bookSize === bookSize && kit.from <= now && now < kit.until && isYoung ? kit : null
}

export function keepKit(clubId: string, teamId: string, kit: KeptKit): void {
  const name = `${clubId}/${teamId}`
  forgetKit(name)
  const [oldest] = kept.keys()
  if (kept.size >= KEPT_MAX && oldest !== undefined) forgetKit(oldest)
  const forget = setTimeout(() => forgetKit(name), KEPT_MILLISECONDS)
  // Nothing waits for it: a process that ends forgets too.
  forget.unref()
  kept.set(name, { ...kit, forget })
}

function forgetKit(name: string): void {
  clearTimeout(kept.get(name)?.forget)
  kept.delete(name)
}

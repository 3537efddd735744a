/** So many requests in a window; the window starts with its first request. */
export type RateLimit = { readonly requests: number; readonly windowSeconds: number }

export type RateAnswer = { readonly allowed: boolean; readonly remaining: number; readonly resetSeconds: number }

/** Counts by key in this process; several instances each count for themselves. */
export type RateCounter = { readonly count: (key: string) => RateAnswer }

// A flood of addresses must not fill the memory; past this the windows that ended are dropped, then the oldest.
const KEYS_MAX = 50_000

export function makeRateCounter(limit: RateLimit, now: () => number): RateCounter {
  const windows = new Map<string, { endsAt: number; used: number }>()
  return {
    count: (key) => {
      const at = now()
      const known = windows.get(key)
      const current =
        known !== undefined && known.endsAt > at ? known : { endsAt: at + limit.windowSeconds * 1000, used: 0 }
      current.used += 1
      if (current !== known) {
        if (windows.size >= KEYS_MAX) dropOldest(windows, at)
        windows.delete(key)
        windows.set(key, current)
      }
      return {
        allowed: current.used <= limit.requests,
        remaining: Math.max(0, limit.requests - current.used),
        resetSeconds: Math.max(1, Math.ceil((current.endsAt - at) / 1000)),
      }
    },
  }
}

function dropOldest(windows: Map<string, { readonly endsAt: number }>, at: number): void {
  for (const [key, { endsAt }] of windows) {
    if (endsAt > at && windows.size < KEYS_MAX) return
    windows.delete(key)
  }
}

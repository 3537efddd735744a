import * as z from 'zod/mini'
import type { Shelf } from './phone-store'
import { type Entry, forget, listEntries } from './store'

/** Where names and marks of children lie on a phone. */
const SHELVES_WITH_NAMES = ['kits', 'evenings'] as const satisfies readonly Shelf[]

export type NameStore = {
  readonly listEntries: (shelf: Shelf) => Promise<readonly Entry[]>
  readonly forget: (shelf: Shelf, key: string) => Promise<boolean>
}

const phone: NameStore = { listEntries, forget }

/** Takes every kit and every evening off this phone; true once all are gone. Writes not yet sent stay. */
export async function forgetNames(store: NameStore = phone): Promise<boolean> {
  return forgetWhere(store, () => true)
}

/** Takes one team's kit off this phone, and the evenings of its dates. */
export async function forgetTeam(
  team: { readonly kitKey: string; readonly dateIds: readonly string[] },
  store: NameStore = phone,
): Promise<boolean> {
  const gone = [store.forget('kits', team.kitKey), ...team.dateIds.map((dateId) => store.forget('evenings', dateId))]
  return (await Promise.all(gone)).every(Boolean)
}

/** Takes off what has lain too long, of whichever team, and what no longer says how old it is. */
export async function forgetOldNames(nowMs: number, store: NameStore = phone): Promise<boolean> {
  return forgetWhere(store, (shelf, value) => {
    if (shelf === 'kits') {
      const kit = z.safeParse(z.looseObject({ keptAt: z.number() }), value)
      return !kit.success || isOldKit(kit.data.keptAt, nowMs)
    }
    const evening = z.safeParse(z.looseObject({ localDate: z.string() }), value)
    return !evening.success || evening.data.localDate < dayOf(nowMs - EVENING_DAYS * DAY_MS)
  })
}

/** Names leave the phone after two weeks without a refresh. */
export function isOldKit(keptAt: number, nowMs: number): boolean {
  return nowMs - keptAt >= KIT_DAYS * DAY_MS
}

const DAY_MS = 24 * 60 * 60_000
const KIT_DAYS = 14
/** Two whole days, wherever the club's zone lies: a report may be written the morning after. */
const EVENING_DAYS = 2

function dayOf(atMs: number): string {
  return new Date(atMs).toISOString().slice(0, 10)
}

async function forgetWhere(store: NameStore, isMeant: (shelf: Shelf, value: unknown) => boolean): Promise<boolean> {
  try {
    const perShelf = SHELVES_WITH_NAMES.map(async (shelf) => {
      const meant = (await store.listEntries(shelf)).filter((entry) => isMeant(shelf, entry.value))
      return (await Promise.all(meant.map((entry) => store.forget(shelf, entry.key)))).every(Boolean)
    })
    return (await Promise.all(perShelf)).every(Boolean)
  } catch {
    return false
  }
}

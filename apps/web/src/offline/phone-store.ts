import { type DBSchema, type IDBPDatabase, openDB } from 'idb'

/** What a phone keeps: kits to show at once, evenings as ticked, its owner's own settings, and writes not yet answered. */
export const SHELVES = ['kits', 'evenings', 'settings', 'outbox'] as const
export type Shelf = (typeof SHELVES)[number]

// Values are unknown on purpose: what comes back from a phone's store is outside data and is parsed by whoever reads it.
type Shelves = DBSchema & Record<Shelf, { key: string; value: unknown }>

let opening: Promise<IDBPDatabase<Shelves>> | null = null

export function openPhoneStore(): Promise<IDBPDatabase<Shelves>> {
  opening ??= openDB<Shelves>('espalier', 1, {
    upgrade(database) {
      for (const shelf of SHELVES) database.createObjectStore(shelf)
    },
  }).catch((error: unknown) => {
    // A private window may refuse once and allow later: the next use tries again.
    opening = null
    throw error
  })
  return opening
}

import * as z from 'zod/mini'
import { openPhoneStore, type Shelf } from './phone-store'

/** Reads one thing; null where there is none, where the shape changed since, or where the browser keeps nothing. */
export async function readKept<Value>(shelf: Shelf, key: string, shape: z.ZodMiniType<Value>): Promise<Value | null> {
  try {
    const database = await openPhoneStore()
    const parsed = z.safeParse(shape, await database.get(shelf, key))
    return parsed.success ? parsed.data : null
  } catch {
    return null
  }
}

/** Everything on a shelf that still reads, in the order of its keys. */
export async function listKept<Value>(shelf: Shelf, shape: z.ZodMiniType<Value>): Promise<readonly Value[]> {
  const database = await openPhoneStore()
  const kept = await database.getAll(shelf)
  return kept.flatMap((value) => {
    const parsed = z.safeParse(shape, value)
    return parsed.success ? [parsed.data] : []
  })
}

/**
 * Keeps one thing and answers whether it is safely on the phone. Strict durability: true means it is on its disk, so that
 * nothing says "saved" which a dead battery could take back.
 */
export async function keep(shelf: Shelf, key: string, value: unknown): Promise<boolean> {
  return write(shelf, (store) => store.put(value, key))
}

/** All that lies on a shelf, readable or not, so that what is old can be found and taken away. */
export async function listEntries(shelf: Shelf): Promise<readonly Entry[]> {
  const database = await openPhoneStore()
  const transaction = database.transaction(shelf)
  // One transaction, so that keys and values belong to each other.
  const [keys, values] = await Promise.all([transaction.store.getAllKeys(), transaction.store.getAll()])
  return keys.map((key, index) => ({ key, value: values[index] }))
}

export type Entry = { readonly key: string; readonly value: unknown }

export async function forget(shelf: Shelf, key: string): Promise<boolean> {
  return write(shelf, (store) => store.delete(key))
}

type WritableShelf = {
  readonly put: (value: unknown, key: string) => Promise<unknown>
  readonly delete: (key: string) => Promise<unknown>
}

async function write(shelf: Shelf, change: (store: WritableShelf) => Promise<unknown>): Promise<boolean> {
  try {
    const database = await openPhoneStore()
    const transaction = database.transaction(shelf, 'readwrite', { durability: 'strict' })
    await Promise.all([change(transaction.store), transaction.done])
    return true
  } catch {
    return false
  }
}

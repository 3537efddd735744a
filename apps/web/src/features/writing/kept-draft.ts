import * as z from 'zod/mini'

/** Words not saved yet, kept in this browser tab so that a reload loses nothing; they go when the tab is closed. */
export type KeptDraft<Document> = {
  /** The saved version they were written from; null for something never saved. */
  readonly fromVersion: number | null
  readonly document: Document
}

type Store = Pick<Storage, 'getItem' | 'setItem' | 'removeItem'>

const PREFIX = 'espalier-unsaved:'

/** Kept words are as foreign as any other input: what does not hold to the shape is thrown away. */
export function readKeptDraft<Document>(
  store: Store,
  name: string,
  shape: z.ZodMiniType<Document>,
): KeptDraft<Document> | null {
  const text = store.getItem(PREFIX + name)
  if (text === null) return null
  const kept = z.strictObject({ fromVersion: z.nullable(z.int()), document: shape })
  const parsed = z.safeParse(kept, parseJson(text))
  return parsed.success ? parsed.data : null
}

/** False where the browser refuses to keep anything, which the page then says. */
export function keepDraft<Document>(store: Store, name: string, draft: KeptDraft<Document>): boolean {
  try {
    store.setItem(PREFIX + name, JSON.stringify(draft))
    return true
  } catch {
    return false
  }
}

export function forgetDraft(store: Store, name: string): void {
  store.removeItem(PREFIX + name)
}

function parseJson(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return undefined
  }
}

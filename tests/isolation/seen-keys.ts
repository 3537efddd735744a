import type { LiveRoute } from './live-routes'
import { caseOf, type World } from './matrix'

/** Who of a club reads: everybody with a role. */
export const READERS = ['administrator', 'director', 'coach', 'assistant', 'auditor'] as const
export type Reader = (typeof READERS)[number]

/** What was written by people who write for all: documents that hold no child and look alike for whoever may read them. */
const WRITTEN = new Set(['document', 'content', 'doc'])

/** What is known of one place in an answer: the keys of its objects, and the longest list found there. */
type Place = { readonly keys: Map<string, 'null' | 'some'>; rows: number | null }

/**
 * The keys of an answer, one line an object: its path, then its keys in order. A key that is null everywhere says so,
 * and so does a list with one row or none, because what a role is not told is often told as nothing.
 */
export function describeKeys(answer: unknown): readonly string[] {
  const places = new Map<string, Place>()
  visit(answer, 'answer', places)
  const told = [...places].filter(([, { keys, rows }]) => keys.size > 0 || rows === 0)
  return told.toSorted(([one], [other]) => (one < other ? -1 : 1)).map(([path, place]) => placeLine(path, place))
}

function placeLine(path: string, { keys, rows }: Place): string {
  if (rows === 0) return `${path}: no row`
  const words = [...keys].map(([key, kind]) => (kind === 'null' ? `${key} (null)` : key))
  return `${path}${rows === 1 ? ' (one row)' : ''}: ${words.toSorted().join(', ')}`
}

function visit(value: unknown, path: string, places: Map<string, Place>): void {
  if (Array.isArray(value)) {
    const rows = placeAt(places, `${path}[]`)
    rows.rows = Math.max(rows.rows ?? 0, value.length)
    for (const row of value) visit(row, `${path}[]`, places)
    return
  }
  if (typeof value !== 'object' || value === null) return
  const { keys } = placeAt(places, path)
  for (const [name, inner] of Object.entries(value)) {
    // A key that is itself an id is one row of many.
    const key = UUID.test(name) ? '<id>' : name
    keys.set(key, inner === null ? (keys.get(key) ?? 'null') : 'some')
    if (!WRITTEN.has(key)) visit(inner, `${path}.${key}`, places)
  }
}

function placeAt(places: Map<string, Place>, path: string): Place {
  const place = places.get(path) ?? { keys: new Map(), rows: null }
  places.set(path, place)
  return place
}

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

/** What each role is told by one route about their own team or club; roles that are told the same stand together. */
export async function describeRoute(world: World, route: LiveRoute): Promise<string> {
  const { path } = caseOf(route).make(world.objects.own)
  const groups = new Map<string, Reader[]>()
  for (const reader of READERS) {
    const answer = await world.people[reader].get(path)
    const told = answer.status === 200 ? describeKeys(answer.json).join('\n    ') : String(answer.status)
    groups.set(told, [...(groups.get(told) ?? []), reader])
  }
  const lines = [...groups].map(([told, readers]) => `  ${readers.join(', ')}\n    ${told}`)
  return [`${route.method} ${route.url}`, ...lines].join('\n')
}

/** The committed expectation, route by route: what stands between two empty lines. */
export function readExpectation(text: string): ReadonlyMap<string, string> {
  const parts = text.trim().split(/\n\n+/)
  return new Map(parts.filter((part) => !part.startsWith('#')).map((part) => [part.split('\n', 1)[0] ?? '', part]))
}

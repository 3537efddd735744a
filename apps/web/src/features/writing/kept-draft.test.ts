import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { forgetDraft, keepDraft, readKeptDraft } from './kept-draft'

const shape = z.strictObject({ title: z.string() })

function storeOf(entries: Readonly<Record<string, string>> = {}) {
  const kept = new Map(Object.entries(entries))
  return {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, value: string) => void kept.set(key, value),
    removeItem: (key: string) => void kept.delete(key),
  }
}

test('kept words come back with the version they were written from', () => {
  const store = storeOf()
  expect(keepDraft(store, 'pattern one', { fromVersion: 3, document: { title: 'Out' } })).toBe(true)
  expect(readKeptDraft(store, 'pattern one', shape)).toEqual({ fromVersion: 3, document: { title: 'Out' } })
  expect(readKeptDraft(store, 'pattern two', shape)).toBeNull()
})

test('forgotten words do not come back', () => {
  const store = storeOf()
  keepDraft(store, 'one', { fromVersion: null, document: { title: 'Out' } })
  forgetDraft(store, 'one')
  expect(readKeptDraft(store, 'one', shape)).toBeNull()
})

test.each([
  ['no JSON', '{'],
  ['another shape', '{"fromVersion":1,"document":{"name":"Out"}}'],
  ['an unknown member', '{"fromVersion":1,"document":{"title":"Out"},"more":1}'],
])('%s is thrown away', (_, text) => {
  expect(readKeptDraft(storeOf({ 'espalier-unsaved:one': text }), 'one', shape)).toBeNull()
})

test('a browser that refuses to keep anything is reported, not hidden', () => {
  const full = {
    ...storeOf(),
    setItem: () => {
      throw new Error('quota')
    },
  }
  expect(keepDraft(full, 'one', { fromVersion: null, document: { title: 'Out' } })).toBe(false)
})

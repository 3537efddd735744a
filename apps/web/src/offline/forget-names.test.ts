import { expect, test } from 'vitest'
import { forgetNames, forgetOldNames, forgetTeam, type NameStore } from './forget-names'
import type { Shelf } from './phone-store'

type Shelves = Record<Shelf, Map<string, unknown>>

const DAY_MS = 24 * 60 * 60_000
const NOW = Date.parse('2026-10-20T18:00:00.000Z')

function fakeStore(): NameStore & { readonly shelves: Shelves } {
  const shelves: Shelves = {
    kits: new Map<string, unknown>([
      ['c fresh', { keptAt: NOW - 14 * DAY_MS + 1, kit: 'Ada' }],
      ['c old', { keptAt: NOW - 14 * DAY_MS, kit: 'Ben' }],
      ['c unreadable', 'Cem'],
    ]),
    evenings: new Map<string, unknown>([
      ['tomorrow', { localDate: '2026-10-21', guests: ['MK'] }],
      ['two days ago', { localDate: '2026-10-18', guests: [] }],
      ['three days ago', { localDate: '2026-10-17', guests: ['MK'] }],
      ['without a date', { guests: ['MK'] }],
    ]),
    settings: new Map([['pace', 800]]),
    outbox: new Map([['report', { memberId: 'm' }]]),
  }
  return {
    shelves,
    listEntries: async (shelf) => [...shelves[shelf]].map(([key, value]) => ({ key, value })),
    forget: async (shelf, key) => shelves[shelf].delete(key),
  }
}

const keysOf = ({ shelves }: { readonly shelves: Shelves }) =>
  Object.values(shelves).map((shelf: Map<string, unknown>) => [...shelf.keys()])

test('all kits and evenings go at once; writes not sent and the own pace stay', async () => {
  const store = fakeStore()
  expect(await forgetNames(store)).toBe(true)
  expect(keysOf(store)).toEqual([[], [], ['pace'], ['report']])
})

test('kits of fourteen days, evenings past by more than two, and what cannot say its age are deleted, nothing else', async () => {
  const store = fakeStore()
  expect(await forgetOldNames(NOW, store)).toBe(true)
  expect(keysOf(store)).toEqual([['c fresh'], ['tomorrow', 'two days ago'], ['pace'], ['report']])
})

test('a team that is no longer shown takes its evenings with it, and no other team', async () => {
  const store = fakeStore()
  expect(await forgetTeam({ kitKey: 'c fresh', dateIds: ['tomorrow'] }, store)).toBe(true)
  expect(keysOf(store)[0]).toEqual(['c old', 'c unreadable'])
  expect(keysOf(store)[1]).toEqual(['two days ago', 'three days ago', 'without a date'])
})

test('a phone that cannot be read or written is never said to be empty', async () => {
  const store = fakeStore()
  expect(await forgetNames({ ...store, forget: async () => false })).toBe(false)
  expect(await forgetNames({ ...store, listEntries: () => Promise.reject(new Error('closed')) })).toBe(false)
})

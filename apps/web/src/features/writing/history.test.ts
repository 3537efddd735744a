import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { type HistoryEvent, historyReducer, startHistory } from './history'

type Edit = { readonly add: number }
const reduce = historyReducer((numbers: readonly number[], { add }: Edit) => (add === 0 ? numbers : [...numbers, add]))
const edit = (add: number, typingIn?: string): HistoryEvent<readonly number[], Edit> =>
  typingIn === undefined ? { kind: 'edit', edit: { add } } : { kind: 'edit', edit: { add }, typingIn }
const run = (...events: readonly HistoryEvent<readonly number[], Edit>[]) =>
  events.reduce(reduce, startHistory<readonly number[]>([]))

test('taking back every edit gives the first document, doing them again the last', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 20 }), (adds) => {
      const written = run(...adds.map((add) => edit(add)))
      const back = adds.reduce((history) => reduce(history, { kind: 'undo' }), written)
      expect(back.document).toEqual([])
      expect(adds.reduce((history) => reduce(history, { kind: 'redo' }), back).document).toEqual(adds)
    }),
  )
})

test('typing into one place is taken back as one, typing elsewhere begins anew', () => {
  const written = run(edit(1, 'title'), edit(2, 'title'), edit(3, 'problem'))
  expect(reduce(written, { kind: 'undo' }).document).toEqual([1, 2])
  expect(reduce(reduce(written, { kind: 'undo' }), { kind: 'undo' }).document).toEqual([])
})

test('an edit that changes nothing leaves no trace', () => {
  expect(run(edit(1), edit(0)).past).toHaveLength(1)
})

test('replacing a document can be taken back, so nothing written is lost', () => {
  const replaced = reduce(run(edit(1), edit(2)), { kind: 'replace', document: [9] })
  expect(reduce(replaced, { kind: 'undo' }).document).toEqual([1, 2])
})

test('undo before the first edit and redo after the last do nothing', () => {
  const start = startHistory<readonly number[]>([])
  expect(reduce(start, { kind: 'undo' })).toBe(start)
  expect(reduce(start, { kind: 'redo' })).toBe(start)
})

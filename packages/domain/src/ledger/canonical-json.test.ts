import canonicalize from 'canonicalize'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { InvariantError } from '../quantities'
import { canonicalJson, type PlainValue } from './canonical-json'

const text = fc.string({ unit: 'grapheme', maxLength: 12 })
const plainValue = fc.letrec<{ value: PlainValue }>((tie) => ({
  value: fc.oneof(
    { maxDepth: 4 },
    text,
    fc.double({ noNaN: true, noDefaultInfinity: true }),
    fc.integer(),
    fc.boolean(),
    fc.constant(null),
    fc.array(tie('value'), { maxLength: 4 }),
    fc.dictionary(text, tie('value'), { maxKeys: 5 }),
  ),
})).value

/** The same value with the members of every object in reverse order. */
function reversed(value: PlainValue): PlainValue {
  if (Array.isArray(value)) return value.map(reversed)
  if (value === null || typeof value !== 'object') return value
  return Object.fromEntries(
    Object.entries(value)
      .reverse()
      .map(([name, member]) => [name, reversed(member)]),
  )
}

test('canonical JSON agrees with an independent implementation', () => {
  fc.assert(
    fc.property(plainValue, (value) => {
      expect(canonicalJson(value)).toBe(canonicalize(value))
    }),
    { numRuns: 500 },
  )
})

test('the order in which members were written does not change the text', () => {
  fc.assert(
    fc.property(plainValue, (value) => {
      expect(canonicalJson(reversed(value))).toBe(canonicalJson(value))
    }),
  )
})

test('reading the text back gives the same text again', () => {
  fc.assert(
    fc.property(plainValue, (value) => {
      const canonical = canonicalJson(value)
      expect(canonicalJson(JSON.parse(canonical))).toBe(canonical)
    }),
  )
})

test('a member called __proto__ is written like any other', () => {
  expect(canonicalJson(JSON.parse('{"b":1,"__proto__":{"a":2}}'))).toBe('{"__proto__":{"a":2},"b":1}')
})

test('members are sorted by code unit and not by code point', () => {
  // U+1F602 begins with the unit D83D and so stands before U+FB33, although its code point is larger.
  expect(canonicalJson({ '\ufb33': 1, '\u{1f602}': 2 })).toBe('{"\u{1f602}":2,"\ufb33":1}')
})

class Stage {
  readonly title = 'first steps'
}

const circular: { self?: unknown } = {}
circular.self = circular

describe('canonical JSON refuses what it could not write exactly', () => {
  test.each<[string, unknown]>([
    ['NaN', Number.NaN],
    ['infinity', Number.POSITIVE_INFINITY],
    ['minus infinity', [Number.NEGATIVE_INFINITY]],
    ['a lone high surrogate', 'a\ud83d'],
    ['a lone low surrogate', { note: '\ude02b' }],
    ['surrogates in the wrong order', '\ude02\ud83d'],
    ['a lone surrogate in a name', { 'a\ud83d': 1 }],
    ['undefined', undefined],
    ['an undefined member', { title: undefined }],
    ['an undefined element', [undefined]],
    ['a hole in an array', new Array(2)],
    ['as many names as holes', Object.assign(new Array(1), { title: 'x' })],
    ['an array with a name', Object.assign([1], { title: 'x' })],
    ['a date', new Date(0)],
    ['a map', new Map([['a', 1]])],
    ['an instance of a class', new Stage()],
    ['bytes', new Uint8Array(2)],
    ['a big integer', 1n],
    ['a symbol', Symbol('a')],
    ['a member named by a symbol', { [Symbol('a')]: 1 }],
    ['a function', () => 1],
    ['a boxed string', Object('a')],
    ['an object with its own toJSON', { toJSON: () => 'x' }],
    ['a value that contains itself', circular],
  ])('%s', (_, value) => {
    expect(() => canonicalJson(value as PlainValue)).toThrow(InvariantError)
  })
})

test('an object without a prototype is plain', () => {
  expect(canonicalJson(Object.assign(Object.create(null), { a: 1 }))).toBe('{"a":1}')
})

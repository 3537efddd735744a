import { assert, compareIds } from '../quantities'
import { utf8Bytes } from './bytes'

/** What may be written canonically: JSON's own values, no others. */
export type PlainValue =
  | null
  | boolean
  | number
  | string
  | readonly PlainValue[]
  | { readonly [key: string]: PlainValue }

/** Deeper than any document of ours; a value that contains itself ends here and not in an exhausted stack. */
const DEPTH_MAX = 100

/**
 * The one text of a value. Source: RFC 8785, JSON Canonicalization Scheme (June 2020), section 3.2: no whitespace,
 * literals and strings as ECMAScript's JSON.stringify writes them, numbers as ECMAScript writes them, members sorted by
 * the UTF-16 code units of their names. Whatever JSON cannot hold exactly is refused, never quietly dropped.
 */
export function canonicalJson(value: PlainValue): string {
  return write(value, 0)
}

export function canonicalBytes(value: PlainValue): Uint8Array {
  return utf8Bytes(canonicalJson(value))
}

function write(value: unknown, depth: number): string {
  assert(depth <= DEPTH_MAX, 'a canonical value is nested too deeply')
  switch (typeof value) {
    case 'string':
      return writeString(value)
    case 'number':
      assert(Number.isFinite(value), 'NaN and Infinity have no canonical form')
      return String(value)
    case 'boolean':
      return value ? 'true' : 'false'
    case 'object':
      if (value === null) return 'null'
      return Array.isArray(value) ? writeArray(value, depth) : writeObject(value, depth)
    default:
      assert(false, `a value of type ${typeof value} has no canonical form`)
  }
}

// In a pattern with the u flag a surrogate matches only where it has no partner.
const LONE_SURROGATE = /\p{Surrogate}/u

function writeString(value: string): string {
  assert(!LONE_SURROGATE.test(value), 'a string with a lone surrogate has no UTF-8 form')
  return JSON.stringify(value)
}

function writeArray(values: readonly unknown[], depth: number): string {
  // Array.from makes a hole an undefined element, which is refused like any other.
  const elements = Array.from(values, (value) => write(value, depth + 1))
  assert(Object.keys(values).length === values.length, 'an array with named members has no canonical form')
  return `[${elements.join(',')}]`
}

function writeObject(value: object, depth: number): string {
  const prototype: unknown = Object.getPrototypeOf(value)
  assert(prototype === Object.prototype || prototype === null, 'only plain objects have a canonical form')
  assert(Object.getOwnPropertySymbols(value).length === 0, 'a symbol cannot name a member')
  const members = Object.entries(value).sort(([a], [b]) => compareIds(a, b))
  return `{${members.map(([name, member]) => `${writeString(name)}:${write(member, depth + 1)}`).join(',')}}`
}

import { assert } from '../quantities'

/** Lower-case hexadecimal, two digits a byte. */
export function hexOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('')
}

const HEX = /^(?:[0-9a-f]{2})*$/

/** Reads lower-case hexadecimal; outside text is checked by the contract before it comes here. */
export function bytesOfHex(text: string): Uint8Array {
  assert(HEX.test(text), 'bytes must be written as pairs of lower-case hexadecimal digits')
  return Uint8Array.from({ length: text.length / 2 }, (_, place) =>
    Number.parseInt(text.slice(place * 2, place * 2 + 2), 16),
  )
}

export function sameBytes(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, place) => byte === b[place])
}

/** Text as UTF-8. A lone surrogate would be replaced silently, so what is hashed goes through canonicalJson first. */
export function utf8Bytes(text: string): Uint8Array {
  return new TextEncoder().encode(text)
}

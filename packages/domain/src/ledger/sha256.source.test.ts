import { createHash } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { hexOf, utf8Bytes } from './bytes'
import { sha256 } from './sha256'

// Source: NIST, example values for FIPS 180-4 "Secure Hash Standard" (August 2015), SHA-256: the one-block message "abc"
// and the two-block message of 448 bits; the empty message and one million times "a" from NIST's additional examples
// (the latter also FIPS 180-2, appendix B.3). Exact; no tolerance.
describe('SHA-256 gives the published digest (FIPS 180-4 example values)', () => {
  test.each([
    ['abc', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    ['nothing', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
    [
      '448 bits',
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    ['one million a', 'a'.repeat(1_000_000), 'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0'],
  ])('of %s', (_, message, digest) => {
    expect(hexOf(sha256(utf8Bytes(message)))).toBe(digest)
  })
})

function nodeSha256Hex(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

test('SHA-256 agrees with Node at every length around one, two and three blocks', () => {
  for (let length = 0; length <= 200; length++) {
    const bytes = Uint8Array.from({ length }, (_, place) => (place * 37 + length) % 256)
    expect(hexOf(sha256(bytes))).toBe(nodeSha256Hex(bytes))
  }
})

test('SHA-256 agrees with Node on random bytes, also on a view into a longer buffer', () => {
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 400 }), fc.nat(40), (bytes, skipped) => {
      const view = bytes.subarray(Math.min(skipped, bytes.length))
      expect(hexOf(sha256(view))).toBe(nodeSha256Hex(view))
    }),
  )
})

test('SHA-256 of a view reads the view and not the start of its buffer', () => {
  const view = Uint8Array.from({ length: 200 }, (_, place) => place).subarray(7)
  expect(hexOf(sha256(view))).toBe(nodeSha256Hex(view))
})

import { secret, sha256Hex as sha256Shape, uuid } from '@espalier/contract/quantities'
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { newSecret, newUuid, sha256Hex } from './identifiers'

// Source: RFC 9562, Appendix A.6 (example of a UUIDv7): unix_ts_ms 0x017F22E279B0, the UUID starts 017F22E2-79B0-7.
test('a UUID starts with its millisecond and says version 7 and the variant of RFC 9562', () => {
  expect(newUuid(0x017f22e279b0)).toMatch(/^017f22e2-79b0-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/)
})

test('UUIDs are what the contract takes, and a thousand of one millisecond all differ', () => {
  const made = Array.from({ length: 1000 }, () => newUuid(1_790_000_000_000))
  expect(new Set(made).size).toBe(1000)
  for (const one of made) expect(z.parse(uuid, one)).toBe(one)
})

test('a secret is 256 bits in base64url as the contract takes it, and never the same twice', () => {
  const made = Array.from({ length: 200 }, newSecret)
  expect(new Set(made).size).toBe(200)
  for (const one of made) expect(z.parse(secret, one)).toBe(one)
})

// Source: FIPS 180-4 examples by NIST: SHA-256 of "abc".
test('SHA-256 of "abc" is the published digest', async () => {
  const digest = await sha256Hex('abc')
  expect(digest).toBe('ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad')
  expect(z.parse(sha256Shape, digest)).toBe(digest)
})

import { createHash } from 'node:crypto'

/** A UUID of version 8 (RFC 9562, section 5.8) that the same parts always give: a replay makes the same rows. */
export function derivedId(...parts: readonly string[]): string {
  const bytes = createHash('sha256').update(parts.join('\n'), 'utf8').digest().subarray(0, 16)
  bytes[6] = 0x80 | (bytes[6]! & 0x0f)
  bytes[8] = 0x80 | (bytes[8]! & 0x3f)
  const hex = bytes.toString('hex')
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join('-')
}

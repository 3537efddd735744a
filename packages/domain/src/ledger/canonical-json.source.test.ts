import { createHash } from 'node:crypto'
import { describe, expect, test } from 'vitest'
import { hexOf } from './bytes'
import { canonicalBytes, canonicalJson, type PlainValue } from './canonical-json'
import source from './fixtures/canonical-json.json'
import { sha256 } from './sha256'

const scratch = new DataView(new ArrayBuffer(8))

function doubleOf(bits: bigint): number {
  scratch.setBigUint64(0, bits)
  return scratch.getFloat64(0)
}

function bitsOf(double: number): bigint {
  scratch.setFloat64(0, double)
  return scratch.getBigUint64(0)
}

// Source: RFC 8785, JSON Canonicalization Scheme (June 2020); test files of its authors, named in the fixture. Exact.
describe('canonical JSON writes the files published with RFC 8785 byte for byte', () => {
  test.each(source.files)('$name', ({ input, outputHex, sha256: digest }) => {
    const bytes = canonicalBytes(JSON.parse(input) as PlainValue)
    expect(hexOf(bytes)).toBe(outputHex)
    expect(hexOf(sha256(bytes))).toBe(digest)
  })
})

describe('canonical JSON writes the numbers of RFC 8785, appendix B', () => {
  test.each(source.numbers.map(([bits, text]) => [bits!, text!] as const))('%s as %s', (bits, text) => {
    expect(canonicalJson(doubleOf(BigInt(`0x${bits}`)))).toBe(text)
  })
})

/**
 * The published sequence of doubles: the edge cases; 2,000 doubles upwards from the smallest normal one; then the
 * chain SHA-256(32 zero bytes), SHA-256 of that and so on, each read as four little-endian doubles, leaving out zero,
 * NaN and the infinities.
 */
function* publishedDoubles(): Generator<number> {
  for (const line of source.numberSequence.edgeCases) {
    for (const bits of line.split(' ')) yield doubleOf(BigInt(`0x${bits}`))
  }
  for (let step = 0n; step < 2000n; step++) yield doubleOf(0x0010000000000000n + step)
  for (let block = Buffer.alloc(32); ; ) {
    block = createHash('sha256').update(block).digest()
    for (const place of [0, 8, 16, 24]) {
      const double = block.readDoubleLE(place)
      if (double !== 0 && Number.isFinite(double)) yield double
    }
  }
}

describe("canonical JSON writes the number sequence of RFC 8785's authors", () => {
  test.each(source.numberSequence.checksums)('$lines lines', ({ lines, sha256: digest }) => {
    const hash = createHash('sha256')
    let written = 0
    for (const double of publishedDoubles()) {
      hash.update(`${bitsOf(double).toString(16)},${canonicalJson(double)}\n`)
      written += 1
      if (written === lines) break
    }
    expect(hash.digest('hex')).toBe(digest)
  })
})

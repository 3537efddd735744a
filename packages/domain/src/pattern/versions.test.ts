import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, test } from 'vitest'
import { PATTERN_DOCUMENT_VERSION } from './document'
import { checkShape } from './rules'
import { openPattern, type StoredPattern } from './versions'

const folder = new URL('./fixtures/', import.meta.url)
const frozen = readdirSync(folder).filter((name) => /^pattern-v\d+\.json$/u.test(name))

function readFixture(name: string): StoredPattern {
  return JSON.parse(readFileSync(new URL(name, folder), 'utf8')) as StoredPattern
}

test('every version ever saved has its frozen document', () => {
  const expected = Array.from({ length: PATTERN_DOCUMENT_VERSION }, (_, index) => `pattern-v${index + 1}.json`)
  expect([...frozen].sort()).toEqual(expected)
})

describe.each(frozen)('%s', (name) => {
  test('opens as a document of today that meets the structural rules', () => {
    const document = openPattern(readFixture(name))
    expect(document.v).toBe(PATTERN_DOCUMENT_VERSION)
    expect(checkShape(document)).toEqual([])
  })
})

test('a document of version 1 opens unchanged', () => {
  const stored = readFixture('pattern-v1.json')
  expect(openPattern(stored)).toEqual(stored)
})

test('a version nobody ever wrote is a bug, not a document', () => {
  const stored = { ...readFixture('pattern-v1.json'), v: 99 } as unknown as StoredPattern
  expect(() => openPattern(stored)).toThrow('unexpected case')
})

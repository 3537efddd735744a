import { randomBytes } from 'node:crypto'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { createSubjectKey, openName, openSubjectKey, sealName } from './sealed-names'

const keyEncryptionKey = randomBytes(32)
const ada = { clubId: 'club-one', playerId: 'ada' }

describe('sealed names', () => {
  test('every name opens again under the unwrapped key', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary' }), (text) => {
        const name = Buffer.from(text, 'utf8').toString('utf8')
        const { key, wrapped } = createSubjectKey(keyEncryptionKey, ada)
        const sealed = sealName(key, name, ada)
        expect(openName(openSubjectKey(keyEncryptionKey, wrapped, ada), sealed, ada)).toBe(name)
      }),
    )
  })

  test('the same name sealed twice looks different, and holds no letter of it', () => {
    const { key } = createSubjectKey(keyEncryptionKey, ada)
    const [one, two] = [sealName(key, 'Rosalind', ada), sealName(key, 'Rosalind', ada)]
    expect(one.equals(two)).toBe(false)
    expect(one.includes('osalin')).toBe(false)
  })

  test('nothing opens for another child, under another key, or with one bit altered', () => {
    const { key, wrapped } = createSubjectKey(keyEncryptionKey, ada)
    const sealed = sealName(key, 'Rosalind', ada)
    const other = { ...ada, playerId: 'bo' }
    expect(() => openName(key, sealed, other)).toThrow()
    expect(() => openSubjectKey(keyEncryptionKey, wrapped, other)).toThrow()
    expect(() => openSubjectKey(randomBytes(32), wrapped, ada)).toThrow()
    for (let index = 0; index < sealed.length; index += 1) {
      const altered = Buffer.from(sealed)
      altered[index]! ^= 1
      expect(() => openName(key, altered, ada)).toThrow()
    }
  })
})

import { expect, test } from 'vitest'
import { sizeWords } from './sheet-areas'

test('a line of the sheet never breaks within a measure', () => {
  const words = sizeWords({ widthMm: 17_000, lengthMm: 24_500 })
  expect(words.replace(/\u00a0/g, ' ')).toBe('17 × 24.5 m')
  expect(words).not.toContain(' ')
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { numberFieldExamples } from './number-field.examples'
import { numberFromText } from './number-text'

test('the unit is part of the name that is read out', () => {
  expect(renderToStaticMarkup(numberFieldExamples['with its unit'])).toMatch(
    /<label[^>]*>Length<span class="sr-only"> \(m\)<\/span><\/label>/,
  )
})

test.each([
  ['36.6', 36.6],
  ['36,6', 36.6],
  [' 40 ', 40],
  ['-2', -2],
])('"%s" is the number %d', (text, value) => {
  expect(numberFromText(text)).toBe(value)
})

test.each(['', 'wide', '1e3', '1.', '3 6', '0x10', 'Infinity', '1.2.3'])('"%s" is no number', (text) => {
  expect(numberFromText(text)).toBeNull()
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { emptyStateExamples } from './empty-state.examples'

test('an empty place says what is missing before what to do', () => {
  const html = renderToStaticMarkup(emptyStateExamples['with what to do'])
  expect(html.indexOf('No space is measured yet.')).toBeLessThan(html.indexOf('Measure a space'))
  expect(html).toContain('No space is measured yet.')
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { originExamples } from './origin.examples'

test('the source is asked for by its kind and stands in the page', () => {
  const html = renderToStaticMarkup(originExamples['a habit'])
  expect(html).toMatch(/<summary[^>]*>habit<\/summary>/)
  expect(html).toContain('Common practice, no source.')
})

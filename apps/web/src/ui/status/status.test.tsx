import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { statusExamples } from './status.examples'

test('the region is there before it speaks, and speaks politely', () => {
  expect(renderToStaticMarkup(statusExamples['nothing to say yet'])).toContain('role="status"')
  expect(renderToStaticMarkup(statusExamples.saved)).toContain('Saved on this phone')
})

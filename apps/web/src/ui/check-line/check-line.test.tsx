import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { checkLineExamples } from './check-line.examples'

test('the whole line is the label of its box', () => {
  const html = renderToStaticMarkup(checkLineExamples.unticked)
  expect(html).toMatch(/<label for="field-example-came-1"[^>]*><input[^>]*id="field-example-came-1"/)
  expect(html).toContain('min-h-target')
})

test('a switch says that it is one and is tied to its hint', () => {
  const html = renderToStaticMarkup(checkLineExamples['a switch with a hint'])
  expect(html).toContain('role="switch"')
  expect(html).toContain('aria-describedby="field-example-coaches-adopt-hint"')
})

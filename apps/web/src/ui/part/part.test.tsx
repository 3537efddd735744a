import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { partExamples } from './part.examples'

test('a part is a press that reads as its words and never submits', () => {
  const html = renderToStaticMarkup(partExamples['a press in a sentence'])
  expect(html.match(/<button type="button"/g)).toHaveLength(3)
  expect(html).toContain('>RCB</button>')
})

test.each([
  ['a choice in a sentence', 'Speed'],
  ['a number in a sentence', 'Pace in centimetres'],
] as const)('%s has a name of its own', (example, name) => {
  expect(renderToStaticMarkup(partExamples[example])).toContain(`aria-label="${name}"`)
})

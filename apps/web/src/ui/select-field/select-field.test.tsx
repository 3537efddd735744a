import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { selectFieldExamples } from './select-field.examples'

test('a choice is named by its label and offers every choice by its words', () => {
  const html = renderToStaticMarkup(selectFieldExamples.plain)
  expect(html).toContain('<label for="field-example-line"')
  for (const words of ['Painted', 'Flags', 'Not there']) expect(html).toContain(`>${words}</option>`)
  expect(html).toContain('<option value="flags" selected="">')
})

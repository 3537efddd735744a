import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { textFieldExamples } from './text-field.examples'

test('a text field is named by its label', () => {
  const html = renderToStaticMarkup(textFieldExamples.plain)
  expect(html).toContain('<label for="field-example-venue"')
  expect(html).toContain('id="field-example-venue"')
})

test('what is wrong is tied to the field together with its hint', () => {
  const html = renderToStaticMarkup(textFieldExamples.wrong)
  expect(html).toContain('aria-invalid="true"')
  expect(html).toContain('aria-describedby="field-example-title-hint field-example-title-wrong"')
  expect(html).toContain('id="field-example-title-wrong"')
})

test('a field with nothing wrong does not say it is invalid', () => {
  expect(renderToStaticMarkup(textFieldExamples['with a hint'])).not.toContain('aria-invalid=')
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { fieldId, fieldIdOfPointer } from './field-id'
import { fieldSetExamples } from './field-set.examples'

test('a group of fields is named by its legend', () => {
  const html = renderToStaticMarkup(fieldSetExamples['fields on one wire'])
  expect(html).toMatch(/<fieldset[^>]*><legend[^>]*>The person<\/legend>/)
})

test.each(['displayName', 'roles/0/teamId'])('the pointer /%s finds the control of that name', (name) => {
  expect(fieldIdOfPointer(`/${name}`)).toBe(fieldId(name))
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { textFieldExamples } from '../text-field/text-field.examples'
import { problemNoticeExamples } from './problem-notice.examples'

test('a refusal interrupts', () => {
  expect(renderToStaticMarkup(problemNoticeExamples['a refusal'])).toContain('role="alert"')
})

test('each wrong place leads to the control of the same name', () => {
  const html = renderToStaticMarkup(problemNoticeExamples['with places to mend'])
  const target = /href="#([^"]+)"[^>]*>Title: must be one line/.exec(html)?.[1]
  expect(target).toBe('field-example-title')
  expect(renderToStaticMarkup(textFieldExamples.wrong)).toContain(`id="${target}"`)
})

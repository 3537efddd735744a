import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { tableExamples } from './table.examples'

const html = renderToStaticMarkup(tableExamples.teams)

test('a table is named by its caption and each row by its first cell', () => {
  expect(html).toMatch(/<caption[^>]*>Teams<\/caption>/)
  expect(html).toMatch(/<th role="rowheader" scope="row"[^>]*><span[^>]*>U10 Larks/)
})

test('every cell keeps its role, so that a phone still reads a table', () => {
  expect(html.match(/role="row"/g)).toHaveLength(3)
  expect(html.match(/role="cell"/g)).toHaveLength(4)
  expect(html.match(/role="columnheader"/g)).toHaveLength(3)
})

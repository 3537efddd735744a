import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { pageFrameExamples } from './page-frame.examples'

const inClub = renderToStaticMarkup(pageFrameExamples['in a club'])

test("the club's name comes first, then the way here, then the only title", () => {
  const order = ['Quillmoor Juniors', 'U10 draft 5', '<h1', 'The page.'].map((part) => inClub.indexOf(part))
  expect(order.every((place) => place >= 0)).toBe(true)
  expect([...order].sort((a, b) => a - b)).toEqual(order)
  expect(inClub.match(/<h1/g)).toHaveLength(1)
})

test('the way here is a named navigation, and there is none where there is no way', () => {
  expect(inClub).toContain('<nav aria-label="Where you are"')
  expect(renderToStaticMarkup(pageFrameExamples['outside any club'])).not.toContain('<nav')
})

test('the first thing reached by keyboard skips to the page', () => {
  expect(inClub.indexOf('href="#page"')).toBe(inClub.indexOf('href='))
  expect(inClub).toContain('<main id="page"')
})

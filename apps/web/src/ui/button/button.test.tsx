import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { Button } from './button'
import { buttonExamples } from './button.examples'

test('a press never submits a form unless asked to', () => {
  expect(renderToStaticMarkup(<Button>Change</Button>)).toContain('type="button"')
  expect(renderToStaticMarkup(<Button type="submit">Save</Button>)).toContain('type="submit"')
})

test('a press that is off stays reachable, says why, and cannot submit', () => {
  const html = renderToStaticMarkup(
    <Button type="submit" offBecause="Two notes are still to fix.">
      Publish
    </Button>,
  )
  expect(html).toContain('aria-disabled="true"')
  expect(html).toContain('Two notes are still to fix.')
  expect(html).toContain('type="button"')
  expect(html).not.toMatch(/\sdisabled/)
})

test('only the next press carries the accent', () => {
  const accented = Object.entries(buttonExamples).filter(([, element]) =>
    renderToStaticMarkup(element).includes('bg-act'),
  )
  expect(accented.map(([name]) => name)).toEqual(['the next press'])
})

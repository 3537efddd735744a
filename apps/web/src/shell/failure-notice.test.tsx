import type { Problem } from '@espalier/contract/problems'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { FailureNotice, wrongAt } from './failure-notice'

const problem: Problem = {
  type: 'about:blank',
  title: 'Something in the request is not as it should be',
  status: 400,
  instance: 'r1',
  code: 'bad-request',
  errors: [{ pointer: '/displayName', detail: 'must be one line' }],
}

test('no failure shows nothing', () => {
  expect(renderToStaticMarkup(<FailureNotice failure={null} />)).toBe('')
})

test('a lost answer says that pressing again does no harm', () => {
  expect(renderToStaticMarkup(<FailureNotice failure={{ kind: 'unreachable' }} />)).toContain('nothing happens twice')
})

test('a problem shows its title and names its places by the words of their controls', () => {
  const html = renderToStaticMarkup(
    <FailureNotice failure={{ kind: 'problem', problem }} labels={{ '/displayName': 'Name' }} />,
  )
  expect(html).toContain(problem.title)
  expect(html).toContain('Name: must be one line')
})

test('a control learns what is wrong with itself only', () => {
  expect(wrongAt({ kind: 'problem', problem }, '/displayName')).toBe('must be one line')
  expect(wrongAt({ kind: 'problem', problem }, '/roles')).toBeUndefined()
  expect(wrongAt(null, '/displayName')).toBeUndefined()
})

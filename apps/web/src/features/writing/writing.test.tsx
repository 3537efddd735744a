import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { BlankChoice, CountedWords } from './blank'
import { lengthFromText, MetresBlank, metresText } from './metres-blank'
import { stateWords } from './save-bar'
import { SaveFailure } from './save-failure'
import { StaleChoice } from './stale-choice'

const ignore = () => undefined

test('metres are typed with point or comma and either minus, and kept as whole millimetres', () => {
  expect(lengthFromText('1.5', -9000, 9000)).toBe(1500)
  expect(lengthFromText('1,5', -9000, 9000)).toBe(1500)
  expect(lengthFromText('−2', -9000, 9000)).toBe(-2000)
  expect(lengthFromText('two', -9000, 9000)).toBeNull()
  expect(lengthFromText('9.1', -9000, 9000)).toBeNull()
  expect(metresText(-1500)).toBe('-1.5')
})

test('metres that are written back are the metres that were read', () => {
  for (const length of [0, 10, 250, -1340, 54860])
    expect(lengthFromText(metresText(length), -150000, 150000)).toBe(length)
  expect(
    renderToStaticMarkup(<MetresBlank label="Up" value={2000} onWrite={ignore} least={0} most={9000} />),
  ).toContain('value="2"')
})

test('choices of one group stand together under its name; what is off says why', () => {
  const html = renderToStaticMarkup(
    <BlankChoice
      label="Where"
      value="a"
      onChoose={ignore}
      choices={[
        { value: 'a', label: 'A', off: null, group: 'Own end' },
        { value: 'b', label: 'B', off: 'not in 9v9', group: 'Their end' },
      ]}
    />,
  )
  expect(html).toContain('<optgroup label="Their end"><option value="b" disabled="">B (not in 9v9)</option></optgroup>')
})

test('words over the limit are marked and counted', () => {
  const say = (words: number, most: number) => `${words} of ${most}`
  const html = renderToStaticMarkup(
    <CountedWords label="Point" value="x" onWrite={ignore} maxLength={80} words={7} most={6} say={say} />,
  )
  expect(html).toContain('aria-invalid="true"')
  expect(html).toContain('7 of 6')
})

test('the bar says what is saved and where the rest is', () => {
  expect(stateWords({ version: null, isChanged: false, isKept: true })).toBe('Not saved yet.')
  expect(stateWords({ version: 3, isChanged: true, isKept: true })).toBe(
    'Changed since version 3. Kept in this browser tab until you save.',
  )
  expect(stateWords({ version: 3, isChanged: true, isKept: false })).toContain('save before you leave')
})

test('of two versions only what differs is marked, in words too', () => {
  const html = renderToStaticMarkup(
    <StaleChoice
      version={4}
      mine={['same', 'mine']}
      theirs={['same', 'theirs']}
      onKeepMine={ignore}
      onTakeTheirs={ignore}
    />,
  )
  expect(html.match(/only here/g)).toHaveLength(2)
  expect(html).toContain('Someone saved version 4')
})

test('a clash whose other side could not be read says what to do; one shown side by side needs no notice', () => {
  const failure = {
    kind: 'problem',
    problem: { type: 'about:blank', title: 'Newer', status: 412, instance: 'r', code: 'version-is-stale' },
  } as const
  expect(renderToStaticMarkup(<SaveFailure failure={failure} isShownAsClash={false} />)).toContain('Yours is kept')
  expect(renderToStaticMarkup(<SaveFailure failure={failure} isShownAsClash />)).toBe('')
  expect(renderToStaticMarkup(<SaveFailure failure={{ kind: 'unreachable' }} isShownAsClash={false} />)).not.toContain(
    'Yours is kept',
  )
})

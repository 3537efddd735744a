import type { PatternSummary } from '@espalier/contract/patterns'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { byProblem, findPatterns, PatternsTable } from './patterns-table'

const pattern = (title: string, problem: string, toFix = 0): PatternSummary => ({
  patternId: `id-${title.replaceAll(' ', '-')}`,
  version: 1,
  title,
  problem,
  formatId: 'us-7v7',
  formation: '2-3-1',
  ageGroup: 'U10',
  steps: 5,
  toFix,
})
const patterns = [
  pattern('Round the back', ''),
  pattern('Third man', 'They press with two', 2),
  pattern('Carry', 'They stand off'),
  pattern('Wall pass', 'A marker follows our midfielder'),
]

test('patterns stand by the problem each answers; one that answers none comes last', () => {
  expect(byProblem(patterns).map(({ title }) => title)).toEqual(['Wall pass', 'Third man', 'Carry', 'Round the back'])
})

test('a pattern is found by words of its problem or title, in any order and case', () => {
  expect(findPatterns(patterns, 'TWO press').map(({ title }) => title)).toEqual(['Third man'])
  expect(findPatterns(patterns, 'wall').map(({ title }) => title)).toEqual(['Wall pass'])
  expect(findPatterns(patterns, '')).toHaveLength(4)
  expect(findPatterns(patterns, 'two wall')).toEqual([])
})

test('each row leads to its pattern and says what is to fix', () => {
  const html = renderToStaticMarkup(<PatternsTable clubId="c" patterns={patterns} />)
  for (const { patternId } of patterns) expect(html).toContain(`href="/clubs/c/patterns/${patternId}"`)
  expect(html).toContain('<span class="font-semibold">2</span>')
  expect(html.match(/nothing/g)).toHaveLength(3)
  expect(html).toContain('problem not written yet')
})

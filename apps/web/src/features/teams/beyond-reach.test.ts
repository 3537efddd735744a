import { localDate, millimetres } from '@espalier/domain/quantities'
import { expect, test } from 'vitest'
import { exampleKit } from '../tonight/kit.fixture'
import { listBeyondReach } from './beyond-reach'

const content = exampleKit.adopted!.content
const reachOf = (strong: number, other: number) => ({
  strongFootMm: millimetres(strong),
  otherFootMm: millimetres(other),
  measuredOn: localDate('2026-09-01'),
})

test('a team that hardly reaches is told of every pattern with a longer pass, in the check’s own words', () => {
  const [pattern] = content.patterns
  const [beyond] = listBeyondReach(content, reachOf(4_000, 3_000))
  expect(beyond).toMatchObject({ patternId: pattern?.patternId, title: pattern?.document.title })
  expect(beyond?.sentences.length).toBeGreaterThan(0)
  for (const sentence of beyond?.sentences ?? []) expect(sentence).toContain('this team finds a gate up to')
})

test('a team that reaches across the pitch is told of none', () => {
  expect(listBeyondReach(content, reachOf(60_000, 60_000))).toEqual([])
})

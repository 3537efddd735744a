import { expect, test } from 'vitest'
import { listBranches } from './branch'
import { samplePattern } from './fixtures/sample-pattern'
import { checkShape } from './rules'

test('an answer is played from the look on, and goes on where it rejoins or ends', () => {
  const ways = listBranches(samplePattern).map((branch) => branch.document.steps.map((step) => step.stepId))
  expect(ways).toEqual([
    ['s1', 'a1', 'a2', 's3'],
    ['s1', 'a3'],
  ])
})

test('every way through a whole pattern is a whole pattern', () => {
  for (const branch of listBranches(samplePattern)) expect(checkShape(branch.document)).toEqual([])
})

test('a pattern without looks has no other ways', () => {
  expect(listBranches({ ...samplePattern, looks: [] })).toEqual([])
})

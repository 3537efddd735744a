import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { changePattern } from './edit-pattern'
import { stepReadAfter } from './pattern-writer'

test('a new step is read at once', () => {
  const next = changePattern(examplePattern, { kind: 'insert-step', list: { kind: 'trunk' }, at: 5 })
  expect(stepReadAfter(next, examplePattern, 's1')).toBe(next.steps[5]?.stepId)
})

test('a step that is gone gives way to the one before it', () => {
  const next = changePattern(examplePattern, { kind: 'remove-step', stepId: 's3' })
  expect(stepReadAfter(next, examplePattern, 's3')).toBe('s2')
  expect(stepReadAfter(next, examplePattern, 's5')).toBe('s5')
})

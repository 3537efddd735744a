import { describe, expect, test } from 'vitest'
import { firstSteps, positionsNeeded, positionsNeededWithAnswers } from './cut'
import { samplePattern } from './fixtures/sample-pattern'
import { checkShape } from './rules'

describe('the first steps of a pattern', () => {
  test('are a pattern of their own that meets the structural rules', () => {
    for (const count of [1, 2, 3, 9]) expect(checkShape(firstSteps(samplePattern, count))).toEqual([])
  })

  test('keep every place and cut the looks behind the end', () => {
    const cut = firstSteps(samplePattern, 1)
    expect(cut.positions).toEqual(samplePattern.positions)
    expect(cut.steps.map((step) => step.stepId)).toEqual(['s1'])
    expect(cut.looks).toEqual([])
  })

  test('end an answer that rejoined behind the cut', () => {
    expect(firstSteps(samplePattern, 2).looks[0]?.answers.map((answer) => answer.rejoins)).toEqual(['exit', 'exit'])
  })

  test('are the whole pattern when more are asked for than there are', () => {
    expect(firstSteps(samplePattern, 9)).toEqual(samplePattern)
  })
})

describe('the positions a pattern needs', () => {
  test('are those who play or run, in the order they are placed', () => {
    expect(positionsNeeded(samplePattern)).toEqual(['GK', 'RCB', 'CM', 'RW'])
    expect(positionsNeeded(firstSteps(samplePattern, 1))).toEqual(['GK', 'RCB'])
  })

  test('take in those an answer brings only when asked', () => {
    const document = { ...samplePattern, steps: samplePattern.steps.map((step) => ({ ...step, runs: [] })) }
    expect(positionsNeeded(document)).toEqual(['GK', 'RCB', 'RW'])
    expect(positionsNeededWithAnswers(document)).toEqual(['GK', 'RCB', 'CM', 'RW'])
  })
})

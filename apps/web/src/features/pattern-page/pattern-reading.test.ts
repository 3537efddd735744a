import { millimetres } from '@espalier/domain/quantities'
import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { changePattern } from './edit-pattern'
import { readPattern, shownPattern, usualStepsMost } from './pattern-reading'
import { stepAtPointer, unfinishedPattern } from './tidy-pattern'

const CHOICES = { penaltyMarkYards7v7: 10 } as const

test('notes carry letters in order, their step, value, limit and where the limit is from', () => {
  const { notes } = readPattern(examplePattern, CHOICES)
  expect(notes.length).toBeGreaterThan(0)
  expect(notes.map(({ letter }) => letter).join('')).toBe('abcdefghijklmnopqrstuvwxyz'.slice(0, notes.length))
  const shut = notes.find(({ sentence }) => sentence.includes('reaches the ball'))
  expect(shut?.measured).toMatch(/^−[\d.]+ s, limit 0\.3 s$/)
  expect(shut?.origin.word).toBe('habit')
})

test('pressing a remedy silences its note', () => {
  const { notes } = readPattern(examplePattern, CHOICES)
  for (const { remedy, stepId, sentence } of notes) {
    if (remedy === null) continue
    const mended = readPattern(changePattern(examplePattern, { kind: 'mend', remedy }), CHOICES)
    expect(mended.notes.filter((note) => note.stepId === stepId).map((note) => note.sentence)).not.toContain(sentence)
  }
})

test('a document without meaning says what to mend at its step and plays nothing', () => {
  const broken = { ...examplePattern, targets: [] }
  const reading = readPattern(broken, CHOICES)
  expect(reading.check).toBeNull()
  expect(reading.notes).toEqual([expect.objectContaining({ stepId: 's5', severity: 'to-fix', remedy: null })])
})

test('a club’s own values of the age are checked with and counted; those of another age change nothing', () => {
  const plain = readPattern(examplePattern, CHOICES)
  const weak = { arrivalSpeed: 1_000, arrivalSpeedIntoSpace: 500, kickSpeedMax: 3_000 }
  const own = readPattern(examplePattern, { ...CHOICES, profiles: { U10: weak } })
  expect([plain.ownValues, own.ownValues]).toEqual([0, 3])
  expect(own.notes.map(({ sentence }) => sentence)).not.toEqual(plain.notes.map(({ sentence }) => sentence))
  expect(readPattern(examplePattern, { ...CHOICES, profiles: { U14: weak } })).toEqual(plain)
})

test('a missing title keeps the page from saving and not from checking', () => {
  const reading = readPattern({ ...examplePattern, title: '  ' }, CHOICES)
  expect(reading.faults.map(({ pointer }) => pointer)).toEqual(['/title'])
  expect(reading.check).not.toBeNull()
})

test('a place off the pitch is to fix', () => {
  const spot = { landmark: 'corner-left', upMm: millimetres(0), rightMm: millimetres(-5000) } as const
  const reading = readPattern(changePattern(examplePattern, { kind: 'place', position: 'LW', spot }), CHOICES)
  expect(reading.notes.filter(({ severity }) => severity === 'to-fix')).not.toEqual([])
})

test('reading a step of an answer shows the way that answer takes', () => {
  const looked = changePattern(examplePattern, { kind: 'add-look', stepId: 's3' })
  const exit = looked.looks[0]?.answers[0]?.steps[0]?.stepId ?? ''
  const shown = shownPattern(looked, exit)
  expect(shown.step).toBe(2)
  expect(shown.document.steps.map(({ stepId }) => stepId)).toEqual(['s1', 's2', exit])
  expect(shownPattern(looked, 's4')).toEqual({ document: looked, step: 3 })
  expect(shownPattern(looked, null).step).toBeUndefined()
})

test('a pointer into a step or an answer finds it', () => {
  const looked = changePattern(examplePattern, { kind: 'add-look', stepId: 's3' })
  expect(stepAtPointer(looked, '/steps/1/action/by')).toBe('s2')
  expect(stepAtPointer(looked, '/looks/0/answers/0/steps/0/point')).toBe(looked.looks[0]?.answers[0]?.steps[0]?.stepId)
  expect(stepAtPointer(looked, '/looks/0/by')).toBe('s3')
  expect(stepAtPointer(looked, '/positions/0')).toBeNull()
})

test('kept words may lack a title and nothing else', () => {
  expect(unfinishedPattern.safeParse({ ...examplePattern, title: '' }).success).toBe(true)
  expect(unfinishedPattern.safeParse({ ...examplePattern, formatId: 'moon' }).success).toBe(false)
  expect(unfinishedPattern.safeParse(null).success).toBe(false)
})

// Source: our own design, section 5 (habit): 5 steps to U10, 6 to U12, 8 above.
test.each([
  ['U8', 5],
  ['U10', 5],
  ['U11', 6],
  ['U12', 6],
  ['U13', 8],
  ['adult', 8],
])('up to the usual number of steps for %s', (age, most) => {
  expect(usualStepsMost(age)).toBe(most)
})

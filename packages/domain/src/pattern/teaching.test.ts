import { expect, test } from 'vitest'
import { samplePattern } from './fixtures/sample-pattern'
import { missingTeaching } from './teaching'

const { teaching } = samplePattern

test('a whole pattern lacks nothing', () => {
  expect(missingTeaching(samplePattern)).toEqual([])
})

test.each([
  ['/title', { ...samplePattern, title: ' ' }],
  ['/problem', { ...samplePattern, problem: '' }],
  ['/steps', { ...samplePattern, steps: [], looks: [] }],
  ['/teaching/why', { ...samplePattern, teaching: { ...teaching, why: '' } }],
  ['/teaching/good', { ...samplePattern, teaching: { ...teaching, good: '' } }],
  ['/teaching/question', { ...samplePattern, teaching: { ...teaching, question: '' } }],
  ['/teaching/easier', { ...samplePattern, teaching: { ...teaching, easier: '' } }],
  ['/teaching/harder', { ...samplePattern, teaching: { ...teaching, harder: '' } }],
  ['/teaching/goLong', { ...samplePattern, teaching: { ...teaching, goLong: '' } }],
  [
    '/teaching/mistakes/0/change',
    { ...samplePattern, teaching: { ...teaching, mistakes: [{ seen: 'a', change: '' }, teaching.mistakes[1]!] } },
  ],
])('what %s lacks is named', (pointer, document) => {
  expect(missingTeaching(document).map((missing) => missing.pointer)).toEqual([pointer])
})

test('a second mistake is asked for with its change', () => {
  const document = { ...samplePattern, teaching: { ...teaching, mistakes: teaching.mistakes.slice(0, 1) } }
  expect(missingTeaching(document).map((missing) => missing.pointer)).toEqual([
    '/teaching/mistakes/1/seen',
    '/teaching/mistakes/1/change',
  ])
})

test('a list of call words may stay empty', () => {
  expect(missingTeaching({ ...samplePattern, teaching: { ...teaching, callWords: [] } })).toEqual([])
})

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { USUAL_SETTING } from './check-setting'
import { openConversation, type PressureWorker, REST_MILLISECONDS } from './pressure-conversation'
import type { PressureAnswer, PressureQuestion } from './pressure-message'

beforeEach(() => vi.useFakeTimers())
afterEach(() => vi.useRealTimers())

const question = (revision: number): PressureQuestion => ({
  revision,
  document: examplePattern,
  choices: { penaltyMarkYards7v7: 10 },
  setting: USUAL_SETTING,
})
const looks = (revision: number): PressureAnswer => ({ revision, part: 'looks', looks: [] })
const last = (revision: number): PressureAnswer => ({ revision, part: 'fault', fault: 'the end' })

/** A worker that answers when the test says so. */
function makeWorker() {
  const asked: number[] = []
  let isEnded = false
  const worker: PressureWorker = {
    postMessage: ({ revision }: PressureQuestion) => asked.push(revision),
    terminate: () => {
      isEnded = true
    },
    onmessage: null,
    onerror: null,
  }
  const answer = (data: PressureAnswer) =>
    worker.onmessage?.call(worker as Worker, { data } as MessageEvent<PressureAnswer>)
  return { worker, asked, answer, isEnded: () => isEnded }
}

function opened() {
  const workers: ReturnType<typeof makeWorker>[] = []
  const told: PressureAnswer[] = []
  const conversation = openConversation({
    start: () => {
      const made = makeWorker()
      workers.push(made)
      return made.worker
    },
    onAnswer: (answer) => told.push(answer),
  })
  return { conversation, workers, told }
}

test('the first question goes out at once, a later one when the hand rests', () => {
  const { conversation, workers } = opened()
  conversation.ask(question(1))
  vi.advanceTimersByTime(0)
  expect(workers[0]?.asked).toEqual([1])
  workers[0]?.answer(last(1))
  for (const revision of [2, 3, 4]) {
    conversation.ask(question(revision))
    vi.advanceTimersByTime(REST_MILLISECONDS - 1)
  }
  expect(workers[0]?.asked).toEqual([1])
  vi.advanceTimersByTime(1)
  expect(workers[0]?.asked).toEqual([1, 4])
})

test('a worker that is done is asked again, one that still works is ended and replaced', () => {
  const { conversation, workers } = opened()
  conversation.ask(question(1))
  vi.advanceTimersByTime(0)
  workers[0]?.answer(looks(1))
  conversation.ask(question(2))
  expect(workers[0]?.isEnded()).toBe(true)
  vi.advanceTimersByTime(REST_MILLISECONDS)
  expect(workers).toHaveLength(2)
  workers[1]?.answer(last(2))
  conversation.ask(question(3))
  vi.advanceTimersByTime(REST_MILLISECONDS)
  expect(workers).toHaveLength(2)
  expect(workers[1]?.isEnded()).toBe(false)
  expect(workers[1]?.asked).toEqual([2, 3])
})

test('an answer to an older question is never told', () => {
  const { conversation, workers, told } = opened()
  conversation.ask(question(1))
  vi.advanceTimersByTime(0)
  workers[0]?.answer(looks(1))
  conversation.ask(question(2))
  workers[0]?.answer(last(1))
  vi.advanceTimersByTime(REST_MILLISECONDS)
  workers[0]?.answer(last(1))
  expect(told).toEqual([looks(1)])
  workers[1]?.answer(looks(2))
  expect(told).toEqual([looks(1), looks(2)])
})

test('where no worker can be had, that is the answer, and the page does not wait', () => {
  const told: PressureAnswer[] = []
  const conversation = openConversation({
    start: () => {
      throw new ReferenceError('Worker is not defined')
    },
    onAnswer: (answer) => told.push(answer),
  })
  conversation.ask(question(1))
  vi.advanceTimersByTime(0)
  expect(told).toEqual([{ revision: 1, part: 'fault', fault: 'Worker is not defined' }])
})

test('a worker that breaks says so for the newest question, and the next question gets a new one', () => {
  const { conversation, workers, told } = opened()
  conversation.ask(question(1))
  vi.advanceTimersByTime(0)
  workers[0]?.worker.onerror?.call(workers[0].worker as Worker, new Event('error') as ErrorEvent)
  expect(told).toEqual([expect.objectContaining({ revision: 1, part: 'fault' })])
  conversation.ask(question(2))
  vi.advanceTimersByTime(REST_MILLISECONDS)
  expect(workers).toHaveLength(2)
})

test('nothing is asked after the page has let go', () => {
  const { conversation, workers } = opened()
  conversation.ask(question(1))
  conversation.drop()
  vi.advanceTimersByTime(REST_MILLISECONDS)
  expect(workers).toEqual([])
})

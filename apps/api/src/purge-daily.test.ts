import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { SEPTEMBER } from '../../../tests/factories/api'
import { purgeDaily } from './purge'

const DAY = 86_400_000

beforeEach(() => {
  vi.useFakeTimers()
})
afterEach(() => {
  vi.useRealTimers()
})

/** A database without clubs, so that a run is one question; `fail` makes it answer nothing. */
function startPurging(fail = false) {
  const runs: ('done' | 'failed')[] = []
  const told: unknown[] = []
  const state = { fail }
  const identity = {
    query: async () => {
      runs.push(state.fail ? 'failed' : 'done')
      if (state.fail) throw new Error('the database is away')
      return { rows: [] }
    },
  }
  const stop = purgeDaily({ pools: { app: {}, identity } as never, now: () => SEPTEMBER }, (failure) =>
    told.push(failure),
  )
  return { runs, told, state, stop }
}

test('what is too old is purged at the start and once each day', async () => {
  const { runs, stop } = startPurging()
  await vi.advanceTimersByTimeAsync(DAY - 1)
  expect(runs).toEqual(['done'])
  await vi.advanceTimersByTimeAsync(1)
  expect(runs).toEqual(['done', 'done'])
  await vi.advanceTimersByTimeAsync(5 * DAY)
  expect(runs).toHaveLength(7)
  stop()
})

test('a run that fails, the first one too, is told once and does not end the days after it', async () => {
  const { runs, told, state, stop } = startPurging()
  state.fail = true
  await vi.advanceTimersByTimeAsync(DAY)
  expect(told).toEqual([new Error('the database is away')])
  state.fail = false
  await vi.advanceTimersByTimeAsync(2 * DAY)
  expect(runs).toEqual(['done', 'failed', 'done', 'done'])
  expect(told).toHaveLength(1)
  stop()

  const broken = startPurging(true)
  await vi.advanceTimersByTimeAsync(1)
  broken.state.fail = false
  await vi.advanceTimersByTimeAsync(DAY)
  broken.stop()
  expect(broken.runs).toEqual(['failed', 'done'])
  expect(broken.told).toEqual([new Error('the database is away')])
})

test('after the stop there is no run and no timer left; control: without it there is one', async () => {
  const { runs, stop } = startPurging()
  expect(vi.getTimerCount()).toBe(1)
  stop()
  expect(vi.getTimerCount()).toBe(0)
  await vi.advanceTimersByTimeAsync(3 * DAY)
  expect(runs).toEqual(['done'])
})

import { expect, test } from 'vitest'
import { walkPath } from './walk-ticks'

const ticksOf = (path: string) => path.split('M').slice(2)

test('a leg has one tick a pace and every fifth is longer', () => {
  const ticks = ticksOf(walkPath({ x: 0, y: 0 }, { x: 8, y: 0 }, 10))
  expect(ticks).toHaveLength(10)
  const long = ticks.filter((tick) => tick.includes('0.75'))
  expect(long).toHaveLength(2)
  expect(ticks[4]).toBe('4 -0.75L4 0.75')
})

test('a leg without a pace is its line alone', () => {
  expect(walkPath({ x: 0, y: 0 }, { x: 0, y: -1 }, 0)).toBe('M0 0L0 -1')
})

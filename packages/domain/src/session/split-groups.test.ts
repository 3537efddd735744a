import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ACTIVITY_KINDS } from '../curriculum'
import { AGE_DEFAULTS } from './age-defaults'
import { GAMES_AN_ADULT, RONDOS_AN_ADULT, splitGroups } from './split-groups'

const ids = (count: number) => Array.from({ length: count }, (_, index) => `c${String(index).padStart(2, '0')}`)
const U10 = AGE_DEFAULTS.U10

describe('groups', () => {
  test.each([
    [4, '3v1'],
    [5, '4v1'],
    [6, '4v2'],
    [7, '5v2'],
    [8, 'two rondos, 3v1'],
    [13, 'three rondos, 4v1 or 3v1'],
  ])('%i children make the rondos %s', (count, detail) => {
    expect(splitGroups('rondo', ids(count), 1, U10, 0).detail).toBe(detail)
  })

  test.each([
    [8, '4v4'],
    [9, '4v4 and one plus player'],
    [15, 'two games, 4v4 or 3v3 and one plus player'],
  ])('%i children play %s', (count, detail) => {
    expect(splitGroups('small-sided-game', ids(count), 2, U10, 0).detail).toBe(detail)
  })

  test('in a build-out game the builders outnumber those who press', () => {
    expect(splitGroups('build-out-game', ids(8), 1, U10, 0).detail).toBe('5v3')
    expect(splitGroups('build-out-game', ids(9), 1, U10, 0).detail).toBe('5v4')
  })

  test('use every child once, areas as even as they go, no more areas than the adults can see, one team of each in bibs', () => {
    const kinds = ACTIVITY_KINDS.filter((kind) => kind !== 'pattern')
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.integer({ min: 4, max: 24 }),
        fc.integer({ min: 1, max: 2 }),
        fc.nat(4),
        (kind, count, adults, turn) => {
          const { groups } = splitGroups(kind, ids(count), adults, U10, turn)
          expect(groups.flatMap((group) => group.children).toSorted()).toEqual(ids(count))
          expect(groups.every((group) => group.children.length > 0)).toBe(true)
          const areas = Math.max(...groups.map((group) => group.area)) + 1
          expect(areas).toBeLessThanOrEqual(adults * (kind === 'rondo' ? RONDOS_AN_ADULT.value : GAMES_AN_ADULT.value))
          const sizes = Array.from({ length: areas }, (_, area) =>
            groups.filter((group) => group.area === area).reduce((sum, group) => sum + group.children.length, 0),
          )
          expect(Math.max(...sizes) - Math.min(...sizes)).toBeLessThanOrEqual(1)
          expect(groups.filter((group) => group.bibs)).toHaveLength(kind === 'rondo' ? 0 : areas)
        },
      ),
    )
  })

  test('no two of four activities in a row have the same teams, and the plus player changes, from five children on', () => {
    for (let count = 5; count <= 24; count += 1) {
      const dealt = [0, 1, 2, 3].map((turn) => splitGroups('small-sided-game', ids(count), 2, U10, turn).groups)
      const teams = dealt.map((groups) =>
        groups
          .map((group) => group.children.toSorted().join())
          .toSorted()
          .join(' '),
      )
      expect(new Set(teams).size).toBe(4)
      const plus = dealt.map((groups) => groups.find((group) => group.role === 'plus')?.children.join())
      if (count % 2 === 1) expect(new Set(plus).size).toBeGreaterThan(1)
    }
  })
})

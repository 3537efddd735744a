import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { randomRequest } from './oracle/random-request'
import { requestArbitrary } from './oracle/request-arbitrary'
import { countBlocksByChild, countPlanChanges, planSums } from './plan-counts'
import { solveLineups } from './solve-lineups'
import type { LineupChild, LineupPlan, LineupRequest } from './types'

const RUNS = { numRuns: 60 }

function child(childId: string, positions: readonly string[], more: Partial<LineupChild> = {}): LineupChild {
  return {
    childId,
    positions: positions.map((position, rank) => ({ position, preference: rank === 0 ? 'home' : 'stretch' })),
    goalkeeper: 'no',
    past: { blocks: 0, left: 0, right: 0 },
    ...more,
  }
}

function sided(count: number): LineupRequest['blocks'] {
  return Array.from({ length: count }, (_, block) => ({ side: block < count / 2 ? 'left' : 'right' }))
}

function planOf(request: LineupRequest): LineupPlan {
  const result = solveLineups(request)
  if (!result.ok) throw new Error(result.refusal.code)
  return result.value
}

function blocksPlayed(plan: LineupPlan, childId: string): number {
  const { left, right } = countBlocksByChild(plan.blocks).get(childId) ?? { left: 0, right: 0 }
  return left + right
}

describe('every plan', () => {
  test('fills every position once in every block, and names everyone else as off', () => {
    fc.assert(
      fc.property(requestArbitrary, (request) => {
        const plan = planOf(request)
        expect(plan.blocks.map((block) => block.side)).toEqual(request.blocks.map((block) => block.side))
        for (const block of plan.blocks) {
          expect(block.places.map((place) => place.position)).toEqual(request.positions)
          const everyone = [...block.places.map((place) => place.childId), ...block.off]
          expect(everyone.sort()).toEqual(request.children.map((it) => it.childId).sort())
        }
      }),
      RUNS,
    )
  })

  test('places children only at positions of their set', () => {
    fc.assert(
      fc.property(requestArbitrary, (request) => {
        for (const place of planOf(request).blocks.flatMap((block) => block.places)) {
          const positions = request.children.find((it) => it.childId === place.childId)!.positions
          expect(positions.map((it) => it.position)).toContain(place.position)
        }
      }),
      RUNS,
    )
  })

  test('keeps one willing goalkeeper throughout', () => {
    fc.assert(
      fc.property(requestArbitrary, (request) => {
        fc.pre(request.goalkeeperPosition !== null)
        const places = planOf(request).blocks.flatMap((block) => block.places)
        const inGoal = new Set(
          places.filter((it) => it.position === request.goalkeeperPosition).map((it) => it.childId),
        )
        expect(inGoal.size).toBe(1)
        expect(request.children.find((it) => inGoal.has(it.childId))!.goalkeeper).not.toBe('no')
      }),
      RUNS,
    )
  })

  test('states the sums and changes that its line-ups have', () => {
    fc.assert(
      fc.property(requestArbitrary, (request) => {
        const plan = planOf(request)
        const sums = planSums(request, plan.blocks)
        expect([plan.sumOfSquares, plan.sideSumOfSquares]).toEqual([sums.squares, sums.sideSquares])
        expect(plan.changes).toBe(countPlanChanges(plan.blocks))
      }),
      RUNS,
    )
  })

  test('is the same plan when children and their positions are listed in another order', () => {
    fc.assert(
      fc.property(requestArbitrary, (request) => {
        const turned = request.children.map((it) => ({ ...it, positions: [...it.positions].reverse() })).reverse()
        expect(planOf({ ...request, children: turned })).toEqual(planOf(request))
      }),
      RUNS,
    )
  })

  test('is exactly as fair, and with as few changes where proven, when every id is another', () => {
    fc.assert(
      fc.property(requestArbitrary, fc.nat({ max: 97 }), (request, turn) => {
        const renamed = (id: string) => `${(id.charCodeAt(id.length - 1) * 31 + turn) % 97}-${id}`
        const plan = planOf(request)
        const other = planOf({
          ...request,
          positions: request.positions.map(renamed),
          goalkeeperPosition: request.goalkeeperPosition === null ? null : renamed(request.goalkeeperPosition),
          children: request.children.map((it) => ({
            ...it,
            childId: renamed(it.childId),
            positions: it.positions.map((place) => ({ ...place, position: renamed(place.position) })),
          })),
        })
        expect([other.sumOfSquares, other.sideSumOfSquares]).toEqual([plan.sumOfSquares, plan.sideSumOfSquares])
        if (plan.changesProven && other.changesProven) expect(other.changes).toBe(plan.changes)
      }),
      RUNS,
    )
  })
})

describe('fairness over weeks', () => {
  const positions = ['LCB', 'RCB', 'CM']
  const squad = ['a', 'b', 'c', 'd', 'e'].map((id) => child(id, positions))

  test('a child who has played more in past weeks plays less tonight, on the same terms', () => {
    const tired = squad.map((it) => (it.childId === 'a' ? { ...it, past: { blocks: 4, left: 2, right: 2 } } : it))
    const plan = planOf({ positions, goalkeeperPosition: null, blocks: sided(4), children: tired })
    expect(squad.map((it) => blocksPlayed(plan, it.childId))).toEqual([0, 3, 3, 3, 3])
  })

  test('adding each evening to the past brings every child within one block of the others, and each side too', () => {
    let children: LineupChild[] = squad
    for (let week = 0; week < 5; week++) {
      const counts = countBlocksByChild(
        planOf({ positions, goalkeeperPosition: null, blocks: sided(4), children }).blocks,
      )
      children = children.map((it) => {
        const { left, right } = counts.get(it.childId) ?? { left: 0, right: 0 }
        const { past } = it
        return {
          ...it,
          past: { blocks: past.blocks + left + right, left: past.left + left, right: past.right + right },
        }
      })
    }
    expect(children.map((it) => it.past.blocks)).toEqual([12, 12, 12, 12, 12])
    expect(children.map((it) => it.past.left)).toEqual([6, 6, 6, 6, 6])
  })

  test('of two children who may keep goal the one who has played less does, and at equal pasts the one who says yes', () => {
    const request = (past: number): LineupRequest => ({
      positions: ['GK', 'CM'],
      goalkeeperPosition: 'GK',
      blocks: sided(2),
      children: [
        child('a', ['CM', 'GK'], { goalkeeper: 'sometimes' }),
        child('b', ['CM', 'GK'], { goalkeeper: 'yes', past: { blocks: past, left: past, right: 0 } }),
        child('c', ['CM']),
      ],
    })
    const keeper = (past: number) => planOf(request(past)).blocks[0]!.places[0]!.childId
    expect(keeper(0)).toBe('b')
    expect(keeper(1)).toBe('a')
  })
})

describe('when it cannot be done', () => {
  test('fewer children than positions are refused with the shortage', () => {
    const children = ['a', 'b'].map((id) => child(id, ['CM', 'RW', 'LW']))
    const request = { positions: ['CM', 'RW', 'LW'], goalkeeperPosition: null, blocks: sided(2), children }
    expect(solveLineups(request)).toEqual({
      ok: false,
      refusal: { code: 'too-few-children', positions: 3, children: 2, shortage: 1 },
    })
  })

  test('the smallest set of positions that lacks children is named, with everyone who could play there', () => {
    const children = [
      ...['a', 'b', 'c', 'd'].map((id) => child(id, ['CM', 'ST'])),
      child('e', ['LW', 'RW', 'LB']),
      child('f', ['LW', 'RW', 'CM']),
    ]
    const request = {
      positions: ['CM', 'ST', 'LW', 'RW', 'LB'],
      goalkeeperPosition: null,
      blocks: sided(2),
      children,
    }
    expect(solveLineups(request)).toEqual({
      ok: false,
      refusal: { code: 'positions-lack-children', positions: ['LB', 'LW', 'RW'], children: ['e', 'f'] },
    })
  })

  test('an unwilling child is never put in goal, even when the goalkeeper position stands in its set', () => {
    const request = {
      positions: ['GK', 'CM'],
      goalkeeperPosition: 'GK',
      blocks: sided(2),
      children: [child('a', ['GK']), child('b', ['CM']), child('c', ['CM'], { goalkeeper: 'yes' })],
    }
    expect(solveLineups(request)).toEqual({
      ok: false,
      refusal: { code: 'positions-lack-children', positions: ['GK'], children: [] },
    })
  })

  test('a refused set of positions lacks children, and no smaller set does', () => {
    fc.assert(
      fc.property(requestArbitrary, fc.nat({ max: 6 }), fc.nat({ max: 6 }), (request, from, to) => {
        const thinned = request.children.map((it) => ({
          ...it,
          positions: it.positions.filter((_, rank) => rank !== (from + it.childId.charCodeAt(2) * to) % 3),
        }))
        const result = solveLineups({ ...request, children: thinned })
        if (result.ok || result.refusal.code !== 'positions-lack-children') return
        const named = result.refusal.positions
        const able = (positions: readonly string[]) =>
          thinned.filter((it) =>
            it.positions.some(
              ({ position }) =>
                positions.includes(position) && (position !== request.goalkeeperPosition || it.goalkeeper !== 'no'),
            ),
          ).length
        expect(able(named)).toBeLessThan(named.length)
        for (const left of named) {
          const fewer = named.filter((it) => it !== left)
          expect(able(fewer)).toBeGreaterThanOrEqual(fewer.length)
        }
      }),
      RUNS,
    )
  })

  test('a fourth position, a child listed twice or a broken count is a bug of the caller', () => {
    const base = { positions: ['CM'], goalkeeperPosition: null, blocks: sided(1) }
    const past = { blocks: 0.5, left: 0, right: 0 }
    expect(() => solveLineups({ ...base, children: [child('a', ['CM', 'LW', 'RW', 'ST'])] })).toThrow('at most three')
    expect(() => solveLineups({ ...base, children: [child('a', ['CM']), child('a', ['CM'])] })).toThrow('once')
    expect(() => solveLineups({ ...base, children: [child('a', ['CM'], { past })] })).toThrow('whole numbers')
    expect(() => solveLineups({ ...base, goalkeeperPosition: 'GK', children: [child('a', ['CM'])] })).toThrow(
      'goalkeeper',
    )
  })
})

test('a child who can change over while sitting out does, so that nobody changes position', () => {
  const plan = planOf(
    randomRequest({ seed: 7, children: 10, positions: 7, blocks: 12, choices: 3, withGoalkeeper: true, pastMost: 0 }),
  )
  expect([plan.changes, plan.changesProven]).toEqual([0, true])
})

test('pasts of a whole season are still compared exactly', () => {
  const children = ['a', 'b', 'c'].map((id, index) =>
    child(id, ['CM', 'ST'], { past: { blocks: 1600 * index, left: 800 * index, right: 800 * index } }),
  )
  const plan = planOf({ positions: ['CM', 'ST'], goalkeeperPosition: null, blocks: sided(6), children })
  expect(children.map((it) => blocksPlayed(plan, it.childId))).toEqual([6, 6, 0])
})

// Source: the pigeonhole principle, worked by hand: R blocks with S places are R·S places for N children; nobody can be spared
// floor(R·S/N), somebody must have ceil(R·S/N), and the counts can be equal first when N divides R·S, at R = N/gcd(N, S). A cyclic
// assignment attains it, so a solver that shares more unevenly is wrong. Whole numbers; no tolerance.
import { describe, expect, test } from 'vitest'
import { bestShare } from './bounds'
import { countBlocksByChild } from './plan-counts'
import { solveLineups } from './solve-lineups'
import type { LineupRequest } from './types'

const ROTATIONS = [
  { children: 14, positions: 10, blocks: 6, least: 4, most: 5, withMost: 4, untilEqual: 7, each: 5 },
  { children: 11, positions: 7, blocks: 11, least: 7, most: 7, withMost: 11, untilEqual: 11, each: 7 },
  { children: 16, positions: 11, blocks: 8, least: 5, most: 6, withMost: 8, untilEqual: 16, each: 11 },
  { children: 12, positions: 9, blocks: 8, least: 6, most: 6, withMost: 12, untilEqual: 4, each: 3 },
] as const

/** Child i may play positions i, i + 1 and i + 2 around the circle: three each, and no position short of children. */
function circle(children: number, positions: number, blocks: number): LineupRequest {
  const names = Array.from({ length: positions }, (_, index) => `P${index}`)
  return {
    positions: names,
    goalkeeperPosition: null,
    blocks: Array.from({ length: blocks }, (_, block) => ({ side: block < blocks / 2 ? 'left' : 'right' })),
    children: Array.from({ length: children }, (_, child) => ({
      childId: `c${child}`,
      positions: [0, 1, 2].map((step) => ({
        position: names[(Math.floor((child * positions) / children) + step) % positions]!,
        preference: step === 0 ? 'home' : 'stretch',
      })),
      goalkeeper: 'no',
      past: { blocks: 0, left: 0, right: 0 },
    })),
  }
}

function sharesOf(request: LineupRequest): number[] {
  const result = solveLineups(request)
  if (!result.ok) throw new Error(result.refusal.code)
  const counts = countBlocksByChild(result.value.blocks)
  return request.children.map(({ childId }) => {
    const { left, right } = counts.get(childId) ?? { left: 0, right: 0 }
    return left + right
  })
}

describe('pigeonhole shares (ROTA-01, -02, -03, -06)', () => {
  test.each(ROTATIONS)('$children children, $positions places, $blocks blocks are shared as evenly as can be', (it) => {
    const shares = sharesOf(circle(it.children, it.positions, it.blocks))
    expect(Math.min(...shares)).toBe(it.least)
    expect(Math.max(...shares)).toBe(it.most)
    expect(shares.filter((share) => share === it.most)).toHaveLength(it.withMost)
  })

  test.each(ROTATIONS)(
    '$children children and $positions places are equal after $untilEqual blocks, not before',
    (it) => {
      expect(sharesOf(circle(it.children, it.positions, it.untilEqual))).toEqual(Array(it.children).fill(it.each))
      for (let blocks = 1; blocks < it.untilEqual; blocks++) {
        expect(new Set(sharesOf(circle(it.children, it.positions, blocks))).size).toBeGreaterThan(1)
      }
    },
  )

  test.each(ROTATIONS)('the bound for $children children and $positions places is stated without solving', (it) => {
    expect(bestShare(it.children, it.positions, it.blocks)).toEqual({
      least: it.least,
      most: it.most,
      childrenWithMost: it.withMost,
      blocksUntilEqual: it.untilEqual,
      eachWhenEqual: it.each,
    })
  })
})

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bestByBruteForce } from './oracle/brute-force'
import { randomRequest } from './oracle/random-request'
import { requestArbitrary } from './oracle/request-arbitrary'
import { countBlocksByChild, countPlanChanges, planSums } from './plan-counts'
import { type LineupEvening, type ResolvedLineups, resolveLineups, type TurnoutChange } from './resolve-lineups'
import { solveLineups } from './solve-lineups'
import type { LineupBlock, LineupChild, LineupRequest } from './types'

function eveningOf(request: LineupRequest, playedBlocks: number): LineupEvening {
  const result = solveLineups(request)
  if (!result.ok) throw new Error(result.refusal.code)
  return { request, plan: result.value, playedBlocks, unavailable: [] }
}

function resolved(evening: LineupEvening, change: TurnoutChange): ResolvedLineups {
  const result = resolveLineups(evening, change)
  if (!result.ok) throw new Error(result.refusal.code)
  return result.value
}

function placesThatDiffer(before: LineupBlock, after: LineupBlock): number {
  return after.places.filter((place, index) => place.childId !== before.places[index]!.childId).length
}

const guest: LineupChild = {
  childId: 'guest',
  positions: [{ position: 'P01', preference: 'home' }],
  goalkeeper: 'no',
  past: { blocks: 6, left: 3, right: 3 },
}

const drawn = randomRequest({
  seed: 3,
  children: 10,
  positions: 7,
  blocks: 8,
  choices: 3,
  withGoalkeeper: true,
  pastMost: 3,
})

/** Ten children for seven places; the last one keeps goal too, if need be. */
const ten: LineupRequest = {
  ...drawn,
  children: drawn.children.map((it) =>
    it.childId === 'c09'
      ? {
          ...it,
          goalkeeper: 'sometimes',
          positions: [...it.positions.slice(0, 2), { position: 'GK', preference: 'owed' }],
        }
      : it,
  ),
}

/** An evening, how far it is, and a child whose turnout changes. */
const situationArbitrary = requestArbitrary
  .filter((request) => request.children.length > request.positions.length)
  .chain((request) =>
    fc.record({
      request: fc.constant(request),
      playedBlocks: fc.nat({ max: request.blocks.length - 1 }),
      child: fc.nat({ max: request.children.length - 1 }),
    }),
  )

describe('after any one change of turnout', () => {
  test('blocks played stay, a child who is out plays no more, and the count of changed places is true', () => {
    fc.assert(
      fc.property(situationArbitrary, ({ request, playedBlocks, child }) => {
        const evening = eveningOf(request, playedBlocks)
        const { childId } = request.children[child]!
        const result = resolveLineups(evening, { kind: 'sits-out', childId })
        if (!result.ok) return
        const { plan } = result.value.evening
        expect(plan.blocks.slice(0, playedBlocks)).toEqual(evening.plan.blocks.slice(0, playedBlocks))
        expect(plan.blocks.map((it) => it.side)).toEqual(request.blocks.map((it) => it.side))
        for (const block of plan.blocks.slice(playedBlocks)) {
          expect(block.places.map((it) => it.position)).toEqual(request.positions)
          expect(new Set(block.places.map((it) => it.childId)).size).toBe(request.positions.length)
          expect([...block.places, ...block.off.map((it) => ({ childId: it }))].map((it) => it.childId)).not.toContain(
            childId,
          )
        }
        const differ = placesThatDiffer(evening.plan.blocks[playedBlocks]!, plan.blocks[playedBlocks]!)
        expect(result.value.placesChanged).toBe(differ)
        expect(result.value.moreNeeded).toBe(differ > 2)
        expect(plan.changes).toBe(countPlanChanges(plan.blocks))
        const sums = planSums(request, plan.blocks)
        expect([plan.sumOfSquares, plan.sideSumOfSquares]).toEqual([sums.squares, sums.sideSquares])
      }),
      { numRuns: 60 },
    )
  })

  test('the blocks to come are the fairest of all when it says so, by looking at every plan', () => {
    let compared = 0
    for (let seed = 1; seed <= 40; seed++) {
      const shape = {
        seed,
        children: 6,
        positions: 4,
        blocks: 5,
        choices: 2,
        withGoalkeeper: seed % 4 === 0,
        pastMost: 3,
      }
      const request = randomRequest(shape)
      const evening = eveningOf(request, 2)
      const result = resolveLineups(evening, { kind: 'leaves', childId: request.children[5]!.childId })
      if (!result.ok || !result.value.fairestOfAll) continue
      const { plan } = result.value.evening
      const rest = restAsRequest(request, evening, request.children[5]!.childId)
      const best = bestByBruteForce(rest)
      const sums = planSums(rest, plan.blocks.slice(2))
      expect([sums.squares, sums.sideSquares]).toEqual([best?.sumOfSquares, best?.sideSumOfSquares])
      compared++
    }
    expect(compared).toBeGreaterThanOrEqual(20)
  })

  test('when more than two places change, no line-up of the next block gets by with two', () => {
    let seen = 0
    for (let seed = 1; seed <= 80; seed++) {
      const shape = { seed, children: 7, positions: 6, blocks: 3, choices: 2, withGoalkeeper: false, pastMost: 2 }
      const request = randomRequest(shape)
      const evening = eveningOf(request, 1)
      const { childId } = request.children[seed % 7]!
      const result = resolveLineups(evening, { kind: 'sits-out', childId })
      if (!result.ok) continue
      const fewest = fewestPlacesChanged(request, evening.plan.blocks[1]!, childId)
      if (result.value.placesChanged > 2) seen++
      expect(result.value.moreNeeded).toBe(fewest > 2)
      if (fewest > 2) expect(result.value.placesChanged).toBe(fewest)
    }
    expect(seen).toBeGreaterThanOrEqual(3)
  })
})

/** The blocks to come as an evening of their own: who is left, with what was played among the past. */
function restAsRequest(request: LineupRequest, evening: LineupEvening, gone: string): LineupRequest {
  const played = evening.plan.blocks.slice(0, evening.playedBlocks)
  const counts = countBlocksByChild(played)
  const keeper = played[0]!.places.find((it) => it.position === request.goalkeeperPosition)?.childId
  return {
    ...request,
    blocks: request.blocks.slice(evening.playedBlocks),
    children: request.children
      .filter((it) => it.childId !== gone)
      .map((it) => {
        const { left, right } = counts.get(it.childId) ?? { left: 0, right: 0 }
        const past = { blocks: it.past.blocks + left + right, left: it.past.left + left, right: it.past.right + right }
        const mayKeep = keeper === undefined || keeper === gone || it.childId === keeper
        return { ...it, past, goalkeeper: mayKeep ? it.goalkeeper : 'no' }
      }),
  }
}

/** By trying every line-up of the block. */
function fewestPlacesChanged(request: LineupRequest, planned: LineupBlock, gone: string): number {
  const fill = (index: number, used: readonly string[]): number => {
    const place = planned.places[index]
    if (place === undefined) return 0
    const able = request.children.filter(
      (it) =>
        it.childId !== gone &&
        !used.includes(it.childId) &&
        it.positions.some((own) => own.position === place.position),
    )
    return able.reduce(
      (least, it) => Math.min(least, fill(index + 1, [...used, it.childId]) + (it.childId === place.childId ? 0 : 1)),
      Number.POSITIVE_INFINITY,
    )
  }
  return fill(0, [])
}

describe('events of an evening', () => {
  test('a child who sits out the next block is replaced there by at most two changes of place', () => {
    const evening = eveningOf(ten, 3)
    const keeper = evening.plan.blocks[3]!.places.find((it) => it.position === 'GK')!.childId
    for (const { childId } of evening.plan.blocks[3]!.places.filter((it) => it.childId !== keeper)) {
      const { placesChanged, moreNeeded } = resolved(evening, { kind: 'sits-out', childId })
      expect(placesChanged).toBeLessThanOrEqual(2)
      expect(placesChanged).toBeGreaterThanOrEqual(1)
      expect(moreNeeded).toBe(false)
    }
  })

  test('a child who sat out and returns is planned again', () => {
    const evening = eveningOf(ten, 1)
    const { childId } = evening.plan.blocks[2]!.places[3]!
    const without = resolved(evening, { kind: 'sits-out', childId }).evening
    const back = resolved({ ...without, playedBlocks: 3 }, { kind: 'returns', childId }).evening
    expect(back.unavailable).toEqual([])
    expect(back.plan.blocks.slice(1, 3).flatMap((it) => it.places.map((place) => place.childId))).not.toContain(childId)
    expect(back.plan.blocks.slice(3).flatMap((it) => it.places.map((place) => place.childId))).toContain(childId)
  })

  test('a guest who arrives is planned from the next block on', () => {
    const after = resolved(eveningOf(ten, 2), { kind: 'arrives', child: guest }).evening
    const everyone = (block: LineupBlock) => [...block.off, ...block.places.map((it) => it.childId)]
    expect(after.plan.blocks.map((block) => everyone(block).includes('guest'))).toEqual([
      ...[false, false],
      ...Array(6).fill(true),
    ])
  })

  test('the goalkeeper stays while available, and another willing child keeps goal once it leaves', () => {
    const evening = eveningOf(ten, 2)
    const inGoal = (block: LineupBlock) => block.places.find((it) => it.position === 'GK')!.childId
    const keeper = inGoal(evening.plan.blocks[0]!)
    const other = ten.children.find((it) => it.childId !== keeper)!.childId
    const stayed = resolved(evening, { kind: 'sits-out', childId: other }).evening.plan
    expect(new Set(stayed.blocks.map(inGoal))).toEqual(new Set([keeper]))
    const left = resolved(evening, { kind: 'leaves', childId: keeper }).evening.plan
    expect(left.blocks.slice(0, 2).map(inGoal)).toEqual([keeper, keeper])
    const successors = new Set(left.blocks.slice(2).map(inGoal))
    expect(successors.size).toBe(1)
    expect(successors.has(keeper)).toBe(false)
  })

  test('too few children left is refused, and the evening is as it was', () => {
    const request = randomRequest({
      seed: 2,
      children: 5,
      positions: 5,
      blocks: 4,
      choices: 3,
      withGoalkeeper: false,
      pastMost: 0,
    })
    const result = resolveLineups(eveningOf(request, 1), { kind: 'leaves', childId: 'c03' })
    expect(result).toEqual({
      ok: false,
      refusal: { code: 'too-few-children', positions: 5, children: 4, shortage: 1 },
    })
  })

  test('when all blocks are played nothing changes but who is available', () => {
    const evening = eveningOf(ten, 8)
    const after = resolved(evening, { kind: 'leaves', childId: 'c04' })
    expect(after.evening).toEqual({ ...evening, unavailable: ['c04'] })
    expect(after.placesChanged).toBe(0)
  })

  test('pasts of a whole season are still compared exactly when the next block comes first', () => {
    const season = ten.children.map((it, index) => {
      const half = 150 * (index % 6)
      return { ...it, past: { blocks: 2 * half, left: half, right: half } }
    })
    const evening = eveningOf({ ...ten, children: season }, 3)
    const played = evening.plan.blocks[3]!.places.filter((it) => it.position !== 'GK')
    for (const { childId } of played) {
      expect(resolved(evening, { kind: 'sits-out', childId }).placesChanged).toBeLessThanOrEqual(2)
    }
  })
})

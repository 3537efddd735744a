import { assert } from '../quantities'
import { type Arc, addArc, type FlowNetwork, reducedCost } from './flow-network'
import type { Instance, SideIndex } from './instance'
import { fillLayers, type Layer, type LayeredFlow } from './layered-network'

export type Range = { readonly least: number; readonly most: number }

/**
 * The fairest counts of field blocks, and the frame in which all other equally fair counts lie: read off the prices of the
 * optimal flow, whose arcs of positive reduced cost no optimal flow uses and whose arcs of negative reduced cost all of them fill.
 */
export type FairCounts = {
  readonly totals: ReadonlyMap<number, Range>
  readonly bySide: readonly [ReadonlyMap<number, Range>, ReadonlyMap<number, Range>]
  /** Positions that a child takes on a side in at least one of the fairest plans. */
  readonly isOpen: (child: number, position: number, side: SideIndex) => boolean
  readonly flow: LayeredFlow
}

/** Blocks counted before the blocks to be planned. */
export type Start = {
  readonly blocks: readonly number[]
  readonly bySide: readonly [readonly number[], readonly number[]]
}

/** How costs of places rank against the two sums of squares; `spread` is the most by which the costs of two plans can differ. */
export type PlaceCosts = { readonly rank: 'before-fairness' | 'after-fairness'; readonly spread: number }

/** Null when the positions cannot all be filled by these players. */
export function fairestCounts(
  instance: Instance,
  players: readonly number[],
  start: Start,
  layers: readonly Layer[],
  placeCosts: PlaceCosts = { rank: 'after-fairness', spread: 0 },
): FairCounts | null {
  const prices = lexicographicPrices(instance, players, start, placeCosts)
  const totalArcs = new Map<number, Arc>()
  const sideArcs = [new Map<number, Arc>(), new Map<number, Arc>()] as const
  const flow = fillLayers(instance, players, layers.map(pricedBy(prices.place)), {
    total: (net, from, to, room, child) => {
      const n = prices.start.blocks[child]!
      totalArcs.set(child, addArc(net, from, to, room, prices.total * (2 * n + 1), 2 * prices.total))
    },
    bySide: (net, from, to, room, child, side) => {
      const n = prices.start.bySide[side][child]!
      sideArcs[side].set(child, addArc(net, from, to, room, prices.side * (2 * n + 1), 2 * prices.side))
    },
  })
  if (!flow.complete) return null
  const ranges = (arcs: ReadonlyMap<number, Arc>) =>
    new Map([...arcs].map(([child, arc]) => [child, rangeOf(flow.net, arc)] as const))
  return {
    totals: ranges(totalArcs),
    bySide: [ranges(sideArcs[0]), ranges(sideArcs[1])],
    isOpen: openPlaces(instance, flow, layers),
    flow,
  }
}

function openPlaces(instance: Instance, flow: LayeredFlow, layers: readonly Layer[]): FairCounts['isOpen'] {
  const key = (child: number, position: number, side: SideIndex) =>
    (child * instance.fieldPositions.length + position) * 2 + side
  const open = new Set<number>()
  for (const place of flow.places) {
    const isUsable = flow.net.flow[place.arc]! > 0 || reducedCost(flow.net, place.arc) === 0
    if (isUsable) open.add(key(place.child, place.position, layers[place.layer]!.side))
  }
  return (child, position, side) => open.has(key(child, position, side))
}

function pricedBy(price: number): (layer: Layer) => Layer {
  return (layer) => ({
    ...layer,
    cost: (child, position) => {
      const cost = layer.cost(child, position)
      return cost === null ? null : cost * price
    },
  })
}

/** Blocks as one layer a side, no place dearer than another. */
export function wholeSides(blocks: readonly SideIndex[]): Layer[] {
  return ([0, 1] as const).flatMap((side) => {
    const ofSide = blocks.filter((it) => it === side).length
    return ofSide > 0 ? [{ side, blocks: ofSide, cost: () => 0 }] : []
  })
}

/**
 * Ranks the criteria by whole-number prices: one step of an earlier one outweighs all that the later ones can differ by. What all
 * children have in common in the past is taken off first; that moves each sum by a constant, since the number of blocks to share
 * out is fixed, and keeps the numbers small.
 */
function lexicographicPrices(
  instance: Instance,
  players: readonly number[],
  start: Start,
  placeCosts: PlaceCosts,
): { readonly total: number; readonly side: number; readonly place: number; readonly start: Start } {
  const blocks = instance.sides.length
  const left = lessTheLeast(start.bySide[0], players)
  const right = lessTheLeast(start.bySide[1], players)
  const total = lessTheLeast(start.blocks, players)
  const spreadOf = (from: readonly number[]) => players.reduce((sum, it) => sum + blocks * (2 * from[it]! + blocks), 0)
  const placesFirst = placeCosts.rank === 'before-fairness'
  const side = placesFirst ? 1 : 1 + placeCosts.spread
  const totalPrice = side * (1 + spreadOf(left) + spreadOf(right))
  const place = placesFirst ? totalPrice * (1 + spreadOf(total)) : 1
  const dearest = totalPrice * 2 * (Math.max(0, ...total) + blocks + 1) + place * placeCosts.spread
  assert(dearest <= Number.MAX_SAFE_INTEGER / 8, 'past blocks differ too widely to be compared exactly')
  return { total: totalPrice, side, place, start: { blocks: total, bySide: [left, right] } }
}

function lessTheLeast(counts: readonly number[], players: readonly number[]): number[] {
  const least = players.reduce((sum, child) => Math.min(sum, counts[child]!), Number.MAX_SAFE_INTEGER)
  return counts.map((count) => Math.max(0, count - least))
}

/** Costs rise strictly from unit to unit, so that optimal flows differ by at most one unit on an arc. */
function rangeOf(net: FlowNetwork, arc: Arc): Range {
  const flow = net.flow[arc]!
  if (reducedCost(net, arc) === 0) return { least: flow, most: flow + 1 }
  return { least: reducedCost(net, arc ^ 1) === 0 ? flow - 1 : flow, most: flow }
}

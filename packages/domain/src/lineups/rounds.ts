import { assert } from '../quantities'
import type { FairCounts, Range } from './counts'
import { addArc, type FlowNetwork } from './flow-network'
import { type Instance, OFF, type Round, type SideIndex } from './instance'
import { type CountArcs, fillLayers, type Layer, type LayeredFlow } from './layered-network'

/** What stays the same while line-ups are arranged: who plays on the field, the fair counts, and who stands where already. */
export type Arrangement = {
  readonly instance: Instance
  readonly players: readonly number[]
  readonly fair: FairCounts
  readonly opening: Round | null
}

/** Above every sum of other costs of one refill: a missed lower bound of the fair counts can never pay. */
const OUTSIDE_FAIR = 1_000_000_000

/** One change of position outweighs all children sitting out twice in a row in the blocks of one refill. */
export const CHANGE = 10_000

/**
 * Deals the fair counts out to single blocks, first to last. Each block takes the line-up with the fewest changes from the one
 * before, of those after which the rest can still be dealt out; by König's theorem there always is one.
 */
export function dealRounds(
  arrangement: Arrangement,
  noise: (child: number, position: number, block: number) => number,
): Round[] {
  const { instance } = arrangement
  const rounds: Round[] = []
  instance.sides.forEach((side, block) => {
    const before = block === 0 ? arrangement.opening : rounds[block - 1]!
    const later = instance.sides.slice(block + 1)
    const rest = ([0, 1] as const).map((it) => ({ side: it, blocks: later.filter((other) => other === it).length }))
    const layers: Layer[] = [
      {
        side,
        blocks: 1,
        cost: (child, position) => costBeside(before, child, position) + noise(child, position, block),
      },
      ...rest.filter((it) => it.blocks > 0).map((it) => ({ ...it, cost: () => 0 })),
    ]
    const flow = fillFairly(arrangement, rounds, layers)
    assert(flow.complete, 'fair counts can always be dealt out')
    rounds.push(roundOf(arrangement, flow, 0))
  })
  return rounds
}

/**
 * Takes out some blocks, no two of them neighbours, and fills them anew together: the best there is for these blocks while the
 * others stay, over all equally fair counts. Costs fall apart by block because no two are neighbours, so one flow is exact.
 */
export function refillRounds(
  arrangement: Arrangement,
  rounds: readonly Round[],
  taken: readonly number[],
  noise: (child: number, position: number, block: number) => number,
): Round[] {
  const kept = rounds.filter((_, block) => !taken.includes(block))
  const keptSides = arrangement.instance.sides.filter((_, block) => !taken.includes(block))
  const layers = taken.map((block): Layer => {
    const before = block === 0 ? arrangement.opening : rounds[block - 1]!
    const after = rounds[block + 1] ?? null
    return {
      side: arrangement.instance.sides[block]!,
      blocks: 1,
      cost: (child, position) =>
        costBeside(before, child, position) + costBeside(after, child, position) + noise(child, position, block),
    }
  })
  const flow = fillFairly(arrangement, kept, layers, keptSides)
  const filled = taken.map((_, layer) => roundOf(arrangement, flow, layer))
  return rounds.map((round, block) => filled[taken.indexOf(block)] ?? round)
}

/** A change costs CHANGE; coming on beside a block on the field costs 1, beside a block off nothing, so that sits are spread. */
function costBeside(neighbour: Round | null, child: number, position: number): number {
  if (neighbour === null || neighbour[child] === OFF) return 0
  return neighbour[child] === position ? 1 : CHANGE + 1
}

function fillFairly(
  arrangement: Arrangement,
  dealt: readonly Round[],
  layers: readonly Layer[],
  dealtSides: readonly SideIndex[] = arrangement.instance.sides.slice(0, dealt.length),
): LayeredFlow {
  const { fair, instance } = arrangement
  const sidesOn = (child: number) => dealtSides.filter((_, index) => dealt[index]![child] !== OFF)
  const counts: CountArcs = {
    total: (net, from, to, room, child) => addRange(net, from, to, room, fair.totals.get(child), sidesOn(child).length),
    bySide: (net, from, to, room, child, side) =>
      addRange(net, from, to, room, fair.bySide[side].get(child), sidesOn(child).filter((it) => it === side).length),
  }
  const open = layers.map((layer) => ({
    ...layer,
    cost: (child: number, position: number) =>
      fair.isOpen(child, position, layer.side) ? layer.cost(child, position) : null,
  }))
  return fillLayers(instance, arrangement.players, open, counts)
}

function addRange(
  net: FlowNetwork,
  from: number,
  to: number,
  room: number,
  range: Range | undefined,
  done: number,
): void {
  assert(range !== undefined, 'every field player has fair counts')
  const least = Math.min(room, Math.max(0, range.least - done))
  const most = Math.min(room, Math.max(0, range.most - done))
  if (least > 0) addArc(net, from, to, least, 0)
  if (most > least) addArc(net, from, to, most - least, OUTSIDE_FAIR)
}

function roundOf(arrangement: Arrangement, flow: LayeredFlow, layer: number): Round {
  const round = arrangement.instance.childIds.map(() => OFF)
  for (const place of flow.places) {
    if (place.layer === layer && flow.net.flow[place.arc]! > 0) round[place.child] = place.position
  }
  return round
}

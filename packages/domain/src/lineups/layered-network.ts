import { type Arc, addArc, createNetwork, type FlowNetwork, sendCheapest } from './flow-network'
import type { Instance, SideIndex } from './instance'

/**
 * Some blocks of one side, to be filled together: every field position once a block, a child at most once a block. By König's
 * theorem counts that respect this can always be dealt out to single blocks: a bipartite multigraph whose largest degree is
 * `blocks` splits into `blocks` matchings. So a layer of many blocks is exact, not an estimate.
 */
export type Layer = {
  readonly side: SideIndex
  readonly blocks: number
  /** Cost of one block of this child at this position, a whole number that is not negative; null forbids it. */
  readonly cost: (child: number, position: number) => number | null
}

/** What bounds or prices a child's blocks: adds the arcs from one node to the next, for at most `room` blocks. */
export type CountArcs = {
  readonly total: (net: FlowNetwork, from: number, to: number, room: number, child: number) => void
  readonly bySide: (net: FlowNetwork, from: number, to: number, room: number, child: number, side: SideIndex) => void
}

export type PlaceArc = { readonly layer: number; readonly child: number; readonly position: number; readonly arc: Arc }

export type LayeredFlow = {
  readonly net: FlowNetwork
  readonly layers: readonly Layer[]
  readonly places: readonly PlaceArc[]
  /** Whether every position of every layer was filled. */
  readonly complete: boolean
}

const SOURCE = 0
const SINK = 1
/** The nodes around a place already bound it; a bound of its own would hide what the prices say about it. */
const UNBOUNDED = 1_000_000
const SIDES = [0, 1] as const

/** Source → child → child and side → child and layer → position and layer → sink, filled as cheaply as possible. */
export function fillLayers(
  instance: Instance,
  players: readonly number[],
  layers: readonly Layer[],
  counts: CountArcs,
): LayeredFlow {
  const positions = instance.fieldPositions.length
  const firstPlaceNode = 2 + players.length * (3 + layers.length)
  const net = createNetwork(firstPlaceNode + positions * layers.length)
  const places: PlaceArc[] = []
  const roomOf = (side: SideIndex) => layers.reduce((sum, layer) => sum + (layer.side === side ? layer.blocks : 0), 0)
  const layersOf = SIDES.map((side) => layers.flatMap((layer, index) => (layer.side === side ? [index] : [])))
  let node = 2
  for (const child of players) {
    const total = node++
    counts.total(net, SOURCE, total, roomOf(0) + roomOf(1), child)
    for (const side of SIDES) {
      const ofSide = node++
      if (layersOf[side]!.length > 0) counts.bySide(net, total, ofSide, roomOf(side), child, side)
      for (const index of layersOf[side]!) {
        const layer = layers[index]!
        const inLayer = layersOf[side]!.length === 1 ? ofSide : node++
        if (inLayer !== ofSide) addArc(net, ofSide, inLayer, layer.blocks, 0)
        for (const position of instance.allowed[child]!) {
          const cost = layer.cost(child, position)
          if (cost === null) continue
          const arc = addArc(net, inLayer, firstPlaceNode + index * positions + position, UNBOUNDED, cost)
          places.push({ layer: index, child, position, arc })
        }
      }
    }
  }
  let needed = 0
  layers.forEach((layer, index) => {
    for (let position = 0; position < positions; position++) {
      addArc(net, firstPlaceNode + index * positions + position, SINK, layer.blocks, 0)
      needed += layer.blocks
    }
  })
  return { net, layers, places, complete: sendCheapest(net, SOURCE, SINK) === needed }
}

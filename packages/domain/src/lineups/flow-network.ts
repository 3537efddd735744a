import { assert } from '../quantities'

/**
 * A network whose arc costs rise in equal steps: unit k of an arc (k = 1, 2, …) costs `cost + slope·(k − 1)`, whole numbers.
 * A slope of zero is an ordinary arc; a positive slope is a square: (n + k)² − (n + k − 1)² = (2n + 1) + 2(k − 1).
 * Arc 2j runs forwards, arc 2j + 1 is its way back.
 */
export type FlowNetwork = {
  readonly firstArc: number[]
  readonly nextArc: number[]
  readonly target: number[]
  readonly capacity: number[]
  readonly flow: number[]
  readonly cost: number[]
  readonly slope: number[]
  /** What the next unit over each arc costs; infinite when the arc is full (or, backwards, empty). */
  readonly unitCost: number[]
  /** After `sendCheapest`: prices that prove the flow cheapest, since no residual arc has a negative reduced cost. */
  readonly price: number[]
}

export type Arc = number

export function createNetwork(nodes: number): FlowNetwork {
  return {
    firstArc: new Array<number>(nodes).fill(-1),
    nextArc: [],
    target: [],
    capacity: [],
    flow: [],
    cost: [],
    slope: [],
    unitCost: [],
    price: new Array<number>(nodes).fill(0),
  }
}

/** Costs must not be negative: then all prices may start at zero. */
export function addArc(net: FlowNetwork, from: number, to: number, capacity: number, cost: number, slope = 0): Arc {
  const arc = net.target.length
  net.nextArc.push(net.firstArc[from]!)
  net.firstArc[from] = arc
  net.nextArc.push(net.firstArc[to]!)
  net.firstArc[to] = arc + 1
  net.target.push(to, from)
  net.capacity.push(capacity, 0)
  net.flow.push(0, 0)
  net.cost.push(cost, 0)
  net.slope.push(slope, 0)
  net.unitCost.push(capacity > 0 ? cost : Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY)
  return arc
}

/** Cost of the next unit over an arc, measured with the prices at its ends; infinite when there is none. */
export function reducedCost(net: FlowNetwork, arc: Arc): number {
  return net.unitCost[arc]! + net.price[net.target[arc ^ 1]!]! - net.price[net.target[arc]!]!
}

/**
 * Sends as much as the network carries from source to sink, as cheaply as that can be done, and returns how much.
 * Successive shortest paths with prices; all shortest paths of one length are used before the next search.
 */
export function sendCheapest(net: FlowNetwork, source: number, sink: number): number {
  const nodes = net.firstArc.length
  const visited = new Uint8Array(nodes)
  let sent = 0
  for (;;) {
    const distance = shortestDistances(net, source, sink)
    const toSink = distance[sink]!
    if (toSink === Number.POSITIVE_INFINITY) return sent
    for (let node = 0; node < nodes; node++) net.price[node] = net.price[node]! + Math.min(distance[node]!, toSink)
    assert(net.price[sink]! <= Number.MAX_SAFE_INTEGER, 'costs of line-ups must stay exact integers')
    for (;;) {
      // Dead ends stay marked between paths, which is quick but may hide a way: only a fresh search that finds none ends it.
      visited.fill(0)
      let round = 0
      for (;;) {
        const pushed = pushAlongFreeArcs(net, source, sink, Number.MAX_SAFE_INTEGER, visited)
        if (pushed === 0) break
        round += pushed
      }
      if (round === 0) break
      sent += round
    }
  }
}

/** Depth-first along arcs of reduced cost zero; a path that reaches the sink leaves no marks. */
function pushAlongFreeArcs(net: FlowNetwork, node: number, sink: number, limit: number, visited: Uint8Array): number {
  if (node === sink) return limit
  visited[node] = 1
  const price = net.price[node]!
  for (let arc = net.firstArc[node]!; arc >= 0; arc = net.nextArc[arc]!) {
    const target = net.target[arc]!
    if (visited[target] === 1 || net.unitCost[arc]! + price !== net.price[target]!) continue
    const pushed = pushAlongFreeArcs(net, target, sink, Math.min(limit, roomOf(net, arc)), visited)
    if (pushed > 0) {
      changeFlow(net, arc & ~1, (arc & 1) === 0 ? pushed : -pushed)
      visited[node] = 0
      return pushed
    }
  }
  return 0
}

/** How many units the arc takes at its present unit cost. */
function roomOf(net: FlowNetwork, arc: Arc): number {
  const forward = arc & ~1
  if (net.slope[forward]! > 0) return 1
  return arc === forward ? net.capacity[forward]! - net.flow[forward]! : net.flow[forward]!
}

function changeFlow(net: FlowNetwork, forward: Arc, by: number): void {
  const flow = net.flow[forward]! + by
  const cost = net.cost[forward]!
  const slope = net.slope[forward]!
  net.flow[forward] = flow
  net.unitCost[forward] = flow < net.capacity[forward]! ? cost + slope * flow : Number.POSITIVE_INFINITY
  net.unitCost[forward + 1] = flow > 0 ? -(cost + slope * (flow - 1)) : Number.POSITIVE_INFINITY
}

/**
 * Dijkstra on reduced costs, which are never negative; a binary heap of (distance, node) with stale entries skipped. It ends at
 * the sink: what lies farther keeps a distance that is no smaller than the sink's.
 */
function shortestDistances(net: FlowNetwork, source: number, sink: number): Float64Array {
  const distance = new Float64Array(net.firstArc.length).fill(Number.POSITIVE_INFINITY)
  const keys: number[] = [0]
  const heap: number[] = [source]
  distance[source] = 0
  while (heap.length > 0) {
    const key = keys[0]!
    const node = heap[0]!
    if (node === sink) break
    removeTop(keys, heap)
    if (key > distance[node]!) continue
    const reached = key + net.price[node]!
    for (let arc = net.firstArc[node]!; arc >= 0; arc = net.nextArc[arc]!) {
      const target = net.target[arc]!
      const farther = reached + net.unitCost[arc]! - net.price[target]!
      if (farther < distance[target]!) {
        distance[target] = farther
        insert(keys, heap, farther, target)
      }
    }
  }
  return distance
}

function insert(keys: number[], heap: number[], key: number, node: number): void {
  let slot = heap.length
  while (slot > 0) {
    const parent = (slot - 1) >> 1
    if (keys[parent]! <= key) break
    keys[slot] = keys[parent]!
    heap[slot] = heap[parent]!
    slot = parent
  }
  keys[slot] = key
  heap[slot] = node
}

function removeTop(keys: number[], heap: number[]): void {
  const key = keys.pop()!
  const node = heap.pop()!
  const size = heap.length
  if (size === 0) return
  let slot = 0
  for (;;) {
    let child = 2 * slot + 1
    if (child >= size) break
    if (child + 1 < size && keys[child + 1]! < keys[child]!) child++
    if (keys[child]! >= key) break
    keys[slot] = keys[child]!
    heap[slot] = heap[child]!
    slot = child
  }
  keys[slot] = key
  heap[slot] = node
}

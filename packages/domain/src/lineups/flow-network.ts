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
    price: new Array<number>(nodes).fill(0),
  }
}

/** Costs must not be negative: then all prices may start at zero. */
export function addArc(net: FlowNetwork, from: number, to: number, capacity: number, cost: number, slope = 0): Arc {
  const arc = net.target.length
  for (const [start, end] of [
    [from, to],
    [to, from],
  ] as const) {
    net.nextArc.push(net.firstArc[start]!)
    net.firstArc[start] = net.target.length
    net.target.push(end)
  }
  net.capacity.push(capacity, 0)
  net.flow.push(0, 0)
  net.cost.push(cost, 0)
  net.slope.push(slope, 0)
  return arc
}

/** What the next unit over a residual arc costs; null when it is full (or, backwards, empty). */
export function nextUnitCost(net: FlowNetwork, arc: Arc): number | null {
  const forward = arc & ~1
  const flow = net.flow[forward]!
  if (arc === forward) return flow < net.capacity[forward]! ? net.cost[forward]! + net.slope[forward]! * flow : null
  return flow > 0 ? -(net.cost[forward]! + net.slope[forward]! * (flow - 1)) : null
}

/** Cost of the next unit over an arc, measured with the prices at its ends; null when there is none. */
export function reducedCost(net: FlowNetwork, arc: Arc): number | null {
  const cost = nextUnitCost(net, arc)
  return cost === null ? null : cost + net.price[net.target[arc ^ 1]!]! - net.price[net.target[arc]!]!
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
    const distance = shortestDistances(net, source)
    const toSink = distance[sink]!
    if (toSink === Number.POSITIVE_INFINITY) return sent
    for (let node = 0; node < nodes; node++) net.price[node] = net.price[node]! + Math.min(distance[node]!, toSink)
    assert(net.price[sink]! <= Number.MAX_SAFE_INTEGER, 'costs of line-ups must stay exact integers')
    for (;;) {
      visited.fill(0)
      const pushed = pushAlongFreeArcs(net, source, sink, Number.MAX_SAFE_INTEGER, visited)
      if (pushed === 0) break
      sent += pushed
    }
  }
}

/** Depth-first along arcs of reduced cost zero. */
function pushAlongFreeArcs(net: FlowNetwork, node: number, sink: number, limit: number, visited: Uint8Array): number {
  if (node === sink) return limit
  visited[node] = 1
  for (let arc = net.firstArc[node]!; arc >= 0; arc = net.nextArc[arc]!) {
    const target = net.target[arc]!
    if (visited[target] === 1 || reducedCost(net, arc) !== 0) continue
    const forward = arc & ~1
    const flow = net.flow[forward]!
    const room = net.slope[forward]! > 0 ? 1 : arc === forward ? net.capacity[forward]! - flow : flow
    const pushed = pushAlongFreeArcs(net, target, sink, Math.min(limit, room), visited)
    if (pushed > 0) {
      net.flow[forward] = flow + (arc === forward ? pushed : -pushed)
      return pushed
    }
  }
  return 0
}

/** Dijkstra on reduced costs, which are never negative; a binary heap of (distance, node) with stale entries skipped. */
function shortestDistances(net: FlowNetwork, source: number): Float64Array {
  const distance = new Float64Array(net.firstArc.length).fill(Number.POSITIVE_INFINITY)
  const keys: number[] = [0]
  const heap: number[] = [source]
  distance[source] = 0
  while (heap.length > 0) {
    const key = keys[0]!
    const node = heap[0]!
    removeTop(keys, heap)
    if (key > distance[node]!) continue
    for (let arc = net.firstArc[node]!; arc >= 0; arc = net.nextArc[arc]!) {
      const step = reducedCost(net, arc)
      if (step === null) continue
      const target = net.target[arc]!
      if (key + step < distance[target]!) {
        distance[target] = key + step
        insert(keys, heap, key + step, target)
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

import type { LineupChild, LineupRequest } from '../types'

/** What makes a request: the same parameters and seed give the same request for ever. */
export type RequestShape = {
  readonly seed: number
  readonly children: number
  readonly positions: number
  readonly blocks: number
  /** How many positions a child has tonight, 1 to 3. */
  readonly choices: number
  readonly withGoalkeeper: boolean
  /** Past blocks per side are drawn from 0 to this. */
  readonly pastMost: number
}

/** Xorshift, 32 bits (Marsaglia, "Xorshift RNGs", Journal of Statistical Software 8(14), 2003): whole numbers below `limit`. */
export function createDraw(seed: number): (limit: number) => number {
  let state = (seed ^ 0x5bd1e995) >>> 0 || 1
  return (limit) => {
    state ^= state << 13
    state ^= state >>> 17
    state ^= state << 5
    state >>>= 0
    return state % limit
  }
}

/** A request that can be filled: one line-up is drawn first and each child in it gets its place among its positions. */
export function randomRequest(shape: RequestShape): LineupRequest {
  const draw = createDraw(shape.seed)
  for (let warm = 0; warm < 8; warm++) draw(2)
  const positions = Array.from({ length: shape.positions }, (_, index) =>
    index === 0 && shape.withGoalkeeper ? 'GK' : `P${String(index).padStart(2, '0')}`,
  )
  const children = Array.from({ length: shape.children }, (_, index) => randomChild(shape, positions, index, draw))
  return {
    positions,
    goalkeeperPosition: shape.withGoalkeeper ? 'GK' : null,
    blocks: Array.from({ length: shape.blocks }, (_, block) => ({
      side: block < Math.ceil(shape.blocks / 2) ? 'left' : 'right',
    })),
    children,
  }
}

function randomChild(
  shape: RequestShape,
  positions: readonly string[],
  index: number,
  draw: (limit: number) => number,
): LineupChild {
  const chosen = new Set<string>([positions[index] ?? positions[draw(positions.length)]!])
  while (chosen.size < Math.min(shape.choices, positions.length)) chosen.add(positions[draw(positions.length)]!)
  const left = draw(shape.pastMost + 1)
  const right = draw(shape.pastMost + 1)
  return {
    childId: `c${String(index).padStart(2, '0')}`,
    positions: [...chosen].map((position, rank) => ({
      position,
      preference: rank === 0 ? 'home' : rank === 1 ? 'stretch' : 'owed',
    })),
    goalkeeper: index === 0 ? 'yes' : (['yes', 'sometimes', 'no'] as const)[draw(3)]!,
    past: { blocks: left + right, left, right },
  }
}

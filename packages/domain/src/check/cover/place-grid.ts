import { type Point, point } from '../../geometry'
import type { Space } from '../../pitch'
import { assert } from '../../quantities'

/** A place of the square grid, the middle of a square; row and column say which places touch. */
export type GridPlace = { readonly at: Point; readonly row: number; readonly column: number }
export type PlaceGrid = readonly GridPlace[]

/** More places than the largest space has square metres: a finer grid would only cost time. */
const PLACES_MAX = 40_000
const GRID_MM_MIN = 100

/**
 * The middles of the squares that fit into a space, as many left as right of its middle, as far as `isAllowed`. They come
 * from the near left, or from the near right for `hand` −1, so that mirrored patterns see mirrored places in one order.
 */
export function placeGrid(space: Space, gridMm: number, hand: 1 | -1, isAllowed: (place: Point) => boolean): PlaceGrid {
  assert(Number.isSafeInteger(gridMm) && gridMm >= GRID_MM_MIN, 'a place is whole millimetres wide, not a hand')
  const rows = Math.floor(space.lengthMm / gridMm)
  const columns = Math.floor(space.widthMm / gridMm)
  assert(rows * columns <= PLACES_MAX, 'a grid has at most forty thousand places')
  const found: GridPlace[] = []
  const restMm = space.lengthMm - rows * gridMm
  for (let row = 0; row < rows; row += 1) {
    for (let column = 0; column < columns; column += 1) {
      const x = (restMm / 2 + (row + 0.5) * gridMm) / 1000
      const y = (hand * (column - (columns - 1) / 2) * gridMm) / 1000
      const at = point(x, y)
      if (isAllowed(at)) found.push({ at, row, column })
    }
  }
  return found
}

/** Places of one kind that touch, told by the one nearest to their middle. */
export type Cluster = { readonly middle: number; readonly size: number }

/** Parts the grid into clusters of touching places of one kind, corners count as touching; null belongs to none. */
export function touchingClusters(grid: PlaceGrid, kindOf: (index: number) => number | null): Cluster[] {
  const width = grid.reduce((most, each) => Math.max(most, each.column), 0) + 3
  // One row and column more all round, so that every neighbour has a cell; zero is no place.
  const cellOf = ({ row, column }: GridPlace) => (row + 1) * width + column + 1
  const placeIn = new Int32Array(grid.reduce((most, each) => Math.max(most, cellOf(each)), 0) + width + 2)
  grid.forEach((place, index) => {
    placeIn[cellOf(place)] = index + 1
  })
  const kinds = grid.map((_, index) => kindOf(index))
  const seen = new Uint8Array(grid.length)
  const clusters: Cluster[] = []
  kinds.forEach((kind, index) => {
    if (kind === null || seen[index] === 1) return
    seen[index] = 1
    const members = [index]
    // Members found on the way are gone through too.
    for (const member of members) {
      for (const step of [-width - 1, -width, -width + 1, -1, 1, width - 1, width, width + 1]) {
        const next = placeIn[cellOf(grid[member]!) + step]! - 1
        if (next < 0 || seen[next] === 1 || kinds[next] !== kind) continue
        seen[next] = 1
        members.push(next)
      }
    }
    clusters.push({ middle: middleOf(grid, members), size: members.length })
  })
  return clusters
}

/** On whole numbers, the first of equally near ones. */
function middleOf(grid: PlaceGrid, members: readonly number[]): number {
  const size = members.length
  const rows = members.reduce((sum, member) => sum + grid[member]!.row, 0)
  const columns = members.reduce((sum, member) => sum + grid[member]!.column, 0)
  const away = (member: number) => (size * grid[member]!.row - rows) ** 2 + (size * grid[member]!.column - columns) ** 2
  const inOrder = [...members].sort((a, b) => a - b)
  return inOrder.reduce((nearest, member) => (away(member) < away(nearest) ? member : nearest))
}

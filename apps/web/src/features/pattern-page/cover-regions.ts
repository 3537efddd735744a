import type { LookCover } from '@espalier/domain/check'
import { type PaperPoint, toPaper } from '../../drawing/paper-point'

/** A square of the cover's grid on the page; `way` as in the cover: an index, or null for a hole. */
export type CoverCell = {
  readonly at: PaperPoint
  readonly row: number
  readonly column: number
  readonly way: number | null
}

/** Squares that touch along a side and have the same way. */
export type CoverRegion = { readonly way: number | null; readonly cells: readonly CoverCell[] }

/** One place is a square metre. */
const PLACE_METRES = 1

/** The places of a cover by row and column, from the top left of the page. */
export function coverCells({ places }: Pick<LookCover, 'places'>): readonly CoverCell[] {
  const papers = places.map(({ at, way }) => ({ at: toPaper(at), way }))
  const left = Math.min(...papers.map(({ at }) => at.x))
  const top = Math.min(...papers.map(({ at }) => at.y))
  return papers.map(({ at, way }) => ({
    at,
    way,
    column: Math.round((at.x - left) / PLACE_METRES),
    row: Math.round((at.y - top) / PLACE_METRES),
  }))
}

const SIDES = [
  [0, 1],
  [1, 0],
  [0, -1],
  [-1, 0],
] as const

/** Parts the cells into regions, in the order their first cells come. */
export function coverRegions(cells: readonly CoverCell[]): readonly CoverRegion[] {
  const byPlace = new Map(cells.map((cell) => [nameOf(cell.row, cell.column), cell]))
  const seen = new Set<CoverCell>()
  return cells.flatMap((first): CoverRegion[] => {
    if (seen.has(first)) return []
    seen.add(first)
    const members = [first]
    // Members found on the way are gone through too.
    for (const { row, column } of members) {
      for (const [down, right] of SIDES) {
        const next = byPlace.get(nameOf(row + down, column + right))
        if (next === undefined || next.way !== first.way || seen.has(next)) continue
        seen.add(next)
        members.push(next)
      }
    }
    return [{ way: first.way, cells: members }]
  })
}

/** Where two neighbouring places differ, as one path: the border between regions. */
export function borderPath(cells: readonly CoverCell[]): string {
  const byPlace = new Map(cells.map((cell) => [nameOf(cell.row, cell.column), cell]))
  const half = PLACE_METRES / 2
  const parts = cells.flatMap(({ at, row, column, way }) => {
    const below = byPlace.get(nameOf(row + 1, column))
    const right = byPlace.get(nameOf(row, column + 1))
    return [
      ...(below !== undefined && below.way !== way ? [`M${round(at.x - half)} ${round(at.y + half)}h1`] : []),
      ...(right !== undefined && right.way !== way ? [`M${round(at.x + half)} ${round(at.y - half)}v1`] : []),
    ]
  })
  return parts.join('')
}

/** A stroke across every hole, so that they read without colour. */
export function hatchPath(cells: readonly CoverCell[]): string {
  const half = PLACE_METRES / 2
  return cells
    .filter((cell) => cell.way === null)
    .map(({ at }) => `M${round(at.x - half)} ${round(at.y + half)}l1 -1`)
    .join('')
}

/**
 * Where the letters of a region stand: on every so-many-th place both ways that `isFree`; a region that has none of these has
 * one at its middle, if it is more than a speck.
 */
export function letterCells(
  region: CoverRegion,
  every: number,
  isFree: (at: PaperPoint) => boolean,
): readonly CoverCell[] {
  const first = Math.floor(every / 2)
  const onGrid = region.cells.filter(
    ({ row, column, at }) => row % every === first && column % every === first && isFree(at),
  )
  if (onGrid.length > 0 || region.cells.length < SPECK_CELLS) return onGrid
  const middle = middleCell(region.cells.filter(({ at }) => isFree(at)))
  return middle === null ? [] : [middle]
}

/** Fewer places than this have no letter of their own. */
const SPECK_CELLS = 3

function middleCell(cells: readonly CoverCell[]): CoverCell | null {
  const x = cells.reduce((sum, { at }) => sum + at.x, 0) / cells.length
  const y = cells.reduce((sum, { at }) => sum + at.y, 0) / cells.length
  const away = ({ at }: CoverCell) => (at.x - x) ** 2 + (at.y - y) ** 2
  return cells.reduce<CoverCell | null>(
    (nearest, cell) => (nearest === null || away(cell) < away(nearest) ? cell : nearest),
    null,
  )
}

function nameOf(row: number, column: number): string {
  return `${row} ${column}`
}

function round(length: number): string {
  return String(Math.round(length * 100) / 100)
}

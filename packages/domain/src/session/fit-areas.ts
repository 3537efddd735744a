import type { ActivityKind } from '../curriculum'
import type { Space } from '../pitch'
import { assert, millimetres } from '../quantities'
import { AREA_SIZES, GAME_SHAPE, WALKING_LANE_MM } from './area-sizes'
import type { Area } from './plan'

/** Areas are measured in half metres: nobody paces finer. */
const GRAIN_MM = 500

export type FittedAreas = {
  readonly areas: readonly Area[]
  /** Square metres of the fullest area for each of its children, whole. */
  readonly squareMetresEach: number
}

/** How wide and how long one activity wants to be for so many children, before the space has its say. */
type Wish = { readonly longMm: number; readonly shortMm: number }

type Fit = { readonly rows: number; readonly columns: number; readonly lengthMm: number; readonly widthMm: number }

/**
 * Equal rectangles for groups that play at the same time, beside and above each other with a walking lane between, from the
 * own goal line up and round the middle. The long side follows the longer side of the place there is, so in a space wider
 * than long the game turns. Where the space is too small the areas shrink; they never leave it or overlap.
 */
export function fitAreas(kind: ActivityKind, groupSizes: readonly number[], space: Space): FittedAreas {
  assert(groupSizes.length > 0, 'areas are for groups')
  const largest = Math.max(...groupSizes)
  const wish = wishedSize(kind, largest)
  const fits = groupSizes.map((_, index) => fitInGrid(groupSizes.length, index + 1, wish, space))
  const best = fits.reduce((a, b) => (b.lengthMm * b.widthMm > a.lengthMm * a.widthMm ? b : a))
  const areas = groupSizes.map((_, index) => placeInGrid(best, index))
  return { areas, squareMetresEach: Math.floor((best.lengthMm * best.widthMm) / 1_000_000 / largest) }
}

function wishedSize(kind: ActivityKind, children: number): Wish {
  const squareMm = AREA_SIZES[kind].value.usual * children * 1_000_000
  const { long, short } = kind === 'rondo' ? { long: 1, short: 1 } : GAME_SHAPE.value
  const longMm = toGrain(Math.sqrt((squareMm * long) / short))
  return { longMm, shortMm: toGrain(squareMm / longMm) }
}

function fitInGrid(count: number, rows: number, wish: Wish, space: Space): Fit {
  const columns = Math.ceil(count / rows)
  const cellLength = toGrain((space.lengthMm - (rows - 1) * WALKING_LANE_MM.value) / rows)
  const cellWidth = toGrain((space.widthMm - (columns - 1) * WALKING_LANE_MM.value) / columns)
  const upright = fitInCell(wish.longMm, wish.shortMm, cellLength, cellWidth)
  const across = fitInCell(wish.shortMm, wish.longMm, cellLength, cellWidth)
  const size = cellWidth > cellLength ? larger(across, upright) : larger(upright, across)
  return { rows, columns, ...size }
}

/** Cut to the cell; what is lost on one side is won back on the other, up to twice as long as wide. */
function fitInCell(lengthMm: number, widthMm: number, cellLength: number, cellWidth: number) {
  const wanted = lengthMm * widthMm
  const length = Math.min(lengthMm, cellLength)
  const width = Math.min(widthMm, cellWidth)
  if (length < lengthMm && length > 0) {
    return {
      lengthMm: length,
      widthMm: Math.min(cellWidth, Math.max(width, Math.min(2 * length, toGrain(wanted / length)))),
    }
  }
  if (width < widthMm && width > 0) {
    return {
      widthMm: width,
      lengthMm: Math.min(cellLength, Math.max(length, Math.min(2 * width, toGrain(wanted / width)))),
    }
  }
  return { lengthMm: Math.max(0, length), widthMm: Math.max(0, width) }
}

function larger<Size extends { readonly lengthMm: number; readonly widthMm: number }>(a: Size, b: Size): Size {
  return b.lengthMm * b.widthMm > a.lengthMm * a.widthMm ? b : a
}

function placeInGrid(fit: Fit, index: number): Area {
  const row = Math.floor(index / fit.columns)
  const column = index % fit.columns
  const stride = fit.widthMm + WALKING_LANE_MM.value
  const leftMost = 0 - ((fit.columns - 1) * stride) / 2
  return {
    upMm: millimetres(row * (fit.lengthMm + WALKING_LANE_MM.value) + fit.lengthMm / 2),
    rightMm: millimetres(leftMost + column * stride),
    lengthMm: millimetres(fit.lengthMm),
    widthMm: millimetres(fit.widthMm),
  }
}

function toGrain(lengthMm: number): number {
  return Math.max(0, Math.floor(lengthMm / GRAIN_MM) * GRAIN_MM)
}

/** Near, far, left and right edges of an area in millimetres. */
export function edgesOf(area: Area) {
  return {
    nearMm: area.upMm - area.lengthMm / 2,
    farMm: area.upMm + area.lengthMm / 2,
    leftMm: area.rightMm - area.widthMm / 2,
    rightMm: area.rightMm + area.widthMm / 2,
  }
}

export function areasOverlap(a: Area, b: Area): boolean {
  const one = edgesOf(a)
  const other = edgesOf(b)
  return (
    one.nearMm < other.farMm && other.nearMm < one.farMm && one.leftMm < other.rightMm && other.leftMm < one.rightMm
  )
}

export function areaInsideSpace(area: Area, space: Space): boolean {
  const { nearMm, farMm, leftMm, rightMm } = edgesOf(area)
  return nearMm >= 0 && farMm <= space.lengthMm && leftMm >= -space.widthMm / 2 && rightMm <= space.widthMm / 2
}

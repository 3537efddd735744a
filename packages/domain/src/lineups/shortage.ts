import { compareIds } from '../quantities'
import type { LineupRefusal, LineupRequest } from './types'

/**
 * Says why no block can be filled, or null when one can. If one block can be filled, all can, by the same line-up, goalkeeper
 * included; by Hall's theorem one cannot exactly when some set of positions has fewer children who may play there than places.
 */
export function findShortage(request: LineupRequest): LineupRefusal | null {
  const places = request.positions.length
  const present = request.children.length
  if (present < places) {
    return { code: 'too-few-children', positions: places, children: present, shortage: places - present }
  }
  const positions = [...request.positions].sort(compareIds)
  const children = [...request.children].sort((a, b) => compareIds(a.childId, b.childId))
  const able = positions.map((position) =>
    children.flatMap((child, index) => {
      const listed = child.positions.some((it) => it.position === position)
      const willing = position !== request.goalkeeperPosition || child.goalkeeper !== 'no'
      return listed && willing ? [index] : []
    }),
  )
  const lacking = findSmallestLackingSet(able)
  if (lacking === null) return null
  const could = new Set(lacking.flatMap((position) => able[position]!))
  return {
    code: 'positions-lack-children',
    positions: lacking.map((position) => positions[position]!),
    children: [...could].sort((a, b) => a - b).map((child) => children[child]!.childId),
  }
}

/** Looks through sets of positions by size, then in order of ids: at most 2¹¹ sets for a full team. */
function findSmallestLackingSet(able: readonly (readonly number[])[]): readonly number[] | null {
  for (let size = 1; size <= able.length; size++) {
    const found = searchSets(able, size, 0, [], new Set())
    if (found !== null) return found
  }
  return null
}

function searchSets(
  able: readonly (readonly number[])[],
  size: number,
  from: number,
  chosen: readonly number[],
  children: ReadonlySet<number>,
): readonly number[] | null {
  if (chosen.length === size) return children.size < size ? chosen : null
  if (children.size >= size) return null
  for (let position = from; position <= able.length - (size - chosen.length); position++) {
    const found = searchSets(
      able,
      size,
      position + 1,
      [...chosen, position],
      new Set([...children, ...able[position]!]),
    )
    if (found !== null) return found
  }
  return null
}

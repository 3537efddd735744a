import { assert, type Metres, metres } from '../quantities'
import { between, distance, type Point } from './point'

/** A way through places in order, in straight legs. */
export type Polyline = readonly Point[]

export function lengthOf(line: Polyline): Metres {
  let total = 0
  for (let index = 1; index < line.length; index += 1) total += distance(line[index - 1]!, line[index]!)
  return metres(total)
}

/** The place a length along the way; before its start it is the start, past its end the end. */
export function pointAlong(line: Polyline, length: Metres): Point {
  const first = line[0]
  assert(first !== undefined, 'a way needs at least one place')
  let left: number = Math.max(0, length)
  let previous = first
  for (const next of line.slice(1)) {
    const leg = distance(previous, next)
    if (left < leg) return between(previous, next, left / leg)
    left -= leg
    previous = next
  }
  return previous
}

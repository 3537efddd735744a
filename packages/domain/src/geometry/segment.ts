import { type Metres, metres } from '../quantities'
import { between, distance, type Point } from './point'

export type Segment = { readonly from: Point; readonly to: Point }

/** Where a place falls on a segment: the nearest point, and how far along it lies. */
export type Projection = {
  readonly point: Point
  /** 0 at the segment's start, 1 at its end; 0 on a segment without length. */
  readonly share: number
  readonly along: Metres
  readonly distance: Metres
}

export function projectOnSegment(place: Point, segment: Segment): Projection {
  const dx = segment.to.x - segment.from.x
  const dy = segment.to.y - segment.from.y
  const squared = dx * dx + dy * dy
  const raw = squared === 0 ? 0 : ((place.x - segment.from.x) * dx + (place.y - segment.from.y) * dy) / squared
  const share = Math.min(1, Math.max(0, raw))
  const nearest = share === 1 ? segment.to : between(segment.from, segment.to, share)
  return { point: nearest, share, along: metres(share * Math.sqrt(squared)), distance: distance(place, nearest) }
}

export function distanceToSegment(place: Point, segment: Segment): Metres {
  return projectOnSegment(place, segment).distance
}

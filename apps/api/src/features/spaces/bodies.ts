import type { SpaceRow as SpaceOnWire } from '@espalier/contract/places'
import { space } from '@espalier/contract/places'
import * as z from 'zod/mini'
import type { SpaceRow } from './queries'

export function spaceBodyOf(row: SpaceRow): SpaceOnWire {
  return { spaceId: row.space_id, version: row.version, space: z.parse(space, row.doc) }
}

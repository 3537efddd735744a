import * as z from 'zod/mini'
import { line, positionCode, uuid } from './quantities'

/** More children than any squad has (habit: common practice, no source); it bounds every list of them. */
export const SQUAD_MAX = 60

/** What is kept of a child, whole. Anything else in an import is refused and never stored. */
export const playerBody = z.strictObject({
  id: uuid,
  shortName: line(24),
  shirt: z.nullable(z.int().check(z.minimum(1), z.maximum(99))),
  home: z.nullable(positionCode),
  stretch: z.nullable(positionCode),
  goalkeeper: z.enum(['yes', 'sometimes', 'no']),
  foot: z.enum(['left', 'right', 'both']),
})
export const squadImportBody = z.strictObject({
  id: uuid,
  players: z.array(playerBody).check(z.minLength(1), z.maxLength(SQUAD_MAX)),
})
export const playerEdit = z.strictObject({
  shortName: line(24),
  shirt: z.nullable(z.int().check(z.minimum(1), z.maximum(99))),
  home: z.nullable(positionCode),
  stretch: z.nullable(positionCode),
  goalkeeper: z.enum(['yes', 'sometimes', 'no']),
  foot: z.enum(['left', 'right', 'both']),
  left: z.boolean(),
})
export const player = z.strictObject({
  playerId: uuid,
  /** Name and shirt are null for who may see pseudonyms but not names (auditor). */
  shortName: z.nullable(line(24)),
  shirt: z.nullable(z.int()),
  home: z.nullable(positionCode),
  stretch: z.nullable(positionCode),
  goalkeeper: z.enum(['yes', 'sometimes', 'no']),
  foot: z.enum(['left', 'right', 'both']),
  version: z.int(),
})
/** Children of a squad; for who may see only how many there are, players is empty. */
export const squad = z.strictObject({ count: z.int(), players: z.array(player) })
export type Player = z.infer<typeof player>
export type PlayerBody = z.infer<typeof playerBody>
export const playerParams = z.strictObject({ clubId: uuid, teamId: uuid, playerId: uuid })
export type PlayerEdit = z.infer<typeof playerEdit>
export type SquadImportBody = z.infer<typeof squadImportBody>

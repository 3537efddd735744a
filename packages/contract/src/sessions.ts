import type { Kit, SquadMember } from '@espalier/domain/session'
import * as z from 'zod/mini'
import { versionContent } from './curricula'
import { equipmentCounts, formatId, reachBody, space } from './places'
import { instantMs, line, localDate, localTime, minutes, positionCode, sha256Hex, uuid } from './quantities'

const tally = z.int().check(z.minimum(0))

const squadMember: z.ZodMiniType<SquadMember> = z.strictObject({
  playerId: uuid,
  shortName: line(24),
  shirt: z.nullable(z.int()),
  home: z.nullable(positionCode),
  stretch: z.nullable(positionCode),
  goalkeeper: z.enum(['yes', 'sometimes', 'no']),
  foot: z.enum(['left', 'right', 'both']),
  past: z.strictObject({ blocks: tally, left: tally, right: tally }),
})

/** Everything a phone needs for one team's next two weeks. */
export const kit: z.ZodMiniType<Kit> = z.strictObject({
  v: z.literal(1),
  club: z.strictObject({ clubId: uuid, name: line(80), zone: line(60), demo: z.boolean() }),
  team: z.strictObject({
    teamId: uuid,
    name: line(60),
    ageGroup: z.string(),
    formatId,
    seasonId: uuid,
    reach: z.exactOptional(z.nullable(reachBody)),
  }),
  adults: z.array(z.strictObject({ memberId: uuid, displayName: line(60) })),
  dates: z.array(
    z.strictObject({
      dateId: uuid,
      startsAt: instantMs,
      minutes,
      localDate,
      localStart: localTime,
      spaceId: z.nullable(uuid),
      state: z.enum(['on', 'cancelled', 'moved']),
      reported: z.boolean(),
    }),
  ),
  spaces: z.array(z.strictObject({ spaceId: uuid, space })),
  equipment: equipmentCounts,
  squad: z.array(squadMember),
  adopted: z.nullable(
    z.strictObject({ curriculumId: uuid, number: z.int(), contentHash: sha256Hex, content: versionContent }),
  ),
  progress: z.array(
    z.strictObject({
      stageId: uuid,
      sessions: tally,
      lastDate: z.nullable(localDate),
      attemptsLeft: tally,
      attemptsRight: tally,
      gotOutLeft: tally,
      gotOutRight: tally,
    }),
  ),
})

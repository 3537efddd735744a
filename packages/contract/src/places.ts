import { type ClubProfiles, PROFILE_FIELDS, PROFILE_IDS } from '@espalier/domain/check'
import type { ClubLimits, ClubSettings } from '@espalier/domain/curriculum'
import { FORMAT_IDS } from '@espalier/domain/formats'
import type { Space } from '@espalier/domain/pitch'
import { FINDINGS } from '@espalier/domain/pitch'
import type { Millimetres } from '@espalier/domain/quantities'
import type { Equipment, MeasuredReach } from '@espalier/domain/session'
import * as z from 'zod/mini'
import { lengthMm, line, localDate, localTime, minutes, spaceSideMm, uuid } from './quantities'

export const formatId = z.enum(FORMAT_IDS)
export const ageGroup = z.string().check(z.regex(/^U([6-9]|1\d|2[0-3])$|^adult$/, 'must be an age group like U10'))

/** In thousandths of the profile's units. What is possible is decided by the domain, since frozen versions outlive ranges. */
const ownValue = z.int().check(z.minimum(1), z.maximum(100_000))
const clubProfile = z.partialRecord(z.enum(PROFILE_FIELDS), ownValue)
export const clubProfiles: z.ZodMiniType<ClubProfiles> = z.partialRecord(
  z.enum(PROFILE_IDS),
  clubProfile,
) as z.ZodMiniType<ClubProfiles>

const crossingAtRelease = z.enum(['when-released', 'when-touched'])
const penaltyMarkYards7v7 = z.union([z.literal(8), z.literal(10)])
/** How a club has its patterns checked: what the technical director sets. */
export const clubLimits = z.strictObject({ crossingAtRelease, penaltyMarkYards7v7, profiles: clubProfiles })
export const limitsEdit: z.ZodMiniType<{ readonly limits: ClubLimits }> = z.strictObject({ limits: clubLimits })
export type LimitsEdit = z.infer<typeof limitsEdit>

export const clubSettings: z.ZodMiniType<ClubSettings> = z.strictObject({
  v: z.literal(1),
  crossingAtRelease,
  penaltyMarkYards7v7,
  coachesAdopt: z.boolean(),
  adultsRequired: z.int().check(z.minimum(1), z.maximum(4)),
  welfareOfficer: line(120, 0),
  profiles: z.exactOptional(clubProfiles),
})

export const club = z.strictObject({
  clubId: uuid,
  name: line(80),
  zone: line(60),
  demo: z.boolean(),
  settings: clubSettings,
  version: z.int(),
})
export type Club = z.infer<typeof club>

export const seasonBody = z.strictObject({ id: uuid, name: line(60), firstDay: localDate, lastDay: localDate })
export type SeasonBody = z.infer<typeof seasonBody>
export const season = z.strictObject({ seasonId: uuid, name: line(60), firstDay: localDate, lastDay: localDate })
export const seasons = z.strictObject({ seasons: z.array(season) })
export type Season = z.infer<typeof season>

export const teamBody = z.strictObject({
  id: uuid,
  seasonId: uuid,
  name: line(60),
  ageGroup,
  category: z.enum(['girls', 'boys', 'mixed']),
  formatId,
})
export type TeamBody = z.infer<typeof teamBody>
/** From 3 to 60 m: outside these a number is a slip of the pen (habit: common practice, no source). */
const reachMm = z.int().check(z.minimum(3_000), z.maximum(60_000)) as unknown as z.ZodMiniType<Millimetres>
/** Two numbers of a team and the day they were measured; nothing of any child. Sent with version 0 the first time. */
export const reachBody: z.ZodMiniType<MeasuredReach> = z.strictObject({
  strongFootMm: reachMm,
  otherFootMm: reachMm,
  measuredOn: localDate,
})
export const teamReach = z.strictObject({
  strongFootMm: reachMm,
  otherFootMm: reachMm,
  measuredOn: localDate,
  version: z.int(),
})

export const team = z.strictObject({
  teamId: uuid,
  seasonId: uuid,
  name: line(60),
  ageGroup,
  category: z.enum(['girls', 'boys', 'mixed']),
  formatId,
  version: z.int(),
  follows: z.nullable(z.strictObject({ curriculumId: uuid, number: z.int(), fromDate: localDate })),
  squadSize: z.int(),
  reach: z.nullable(teamReach),
})
export const teams = z.strictObject({ teams: z.array(team) })
export type Team = z.infer<typeof team>

const finding = z.enum(FINDINGS)
export const space: z.ZodMiniType<Space> = z.strictObject({
  name: line(60),
  venue: line(60),
  lengthMm: spaceSideMm,
  widthMm: spaceSideMm,
  covers: z.enum(['whole', 'half', 'plain']),
  formatId,
  markings: z.strictObject({
    boundary: finding,
    'goal-area': finding,
    'penalty-area': finding,
    'penalty-mark': finding,
    'build-out-line': finding,
    halfway: finding,
    'centre-circle': finding,
  }),
  goals: z
    .array(z.strictObject({ end: z.enum(['own', 'far']), widthMm: lengthMm, movable: z.boolean() }))
    .check(z.maxLength(4)),
})
export const spaceBody = z.strictObject({ id: uuid, space })
export const spaceEdit = z.strictObject({ space })
export type SpaceBody = z.infer<typeof spaceBody>
export type SpaceEdit = z.infer<typeof spaceEdit>
export const spaceRow = z.strictObject({ spaceId: uuid, version: z.int(), space })
export const spaces = z.strictObject({ spaces: z.array(spaceRow) })
export type SpaceRow = z.infer<typeof spaceRow>
export const spaceParams = z.strictObject({ clubId: uuid, spaceId: uuid })

/** A weekly slot in the club's zone: it becomes training dates inside its season. Monday is 1. */
export const slotBody = z.strictObject({
  id: uuid,
  spaceId: z.nullable(uuid),
  weekday: z.int().check(z.minimum(1), z.maximum(7)),
  localStart: localTime,
  minutes: z.int().check(z.minimum(20), z.maximum(180)),
  validFrom: localDate,
  validTo: localDate,
})
export type SlotBody = z.infer<typeof slotBody>
export const slot = z.strictObject({
  slotId: uuid,
  spaceId: z.nullable(uuid),
  weekday: z.int(),
  localStart: localTime,
  minutes: z.int(),
  validFrom: localDate,
  validTo: localDate,
})
export type Slot = z.infer<typeof slot>
export const slots = z.strictObject({ slots: z.array(slot) })
export const trainingDate = z.strictObject({
  dateId: uuid,
  localDate,
  localStart: localTime,
  minutes,
  spaceId: z.nullable(uuid),
  state: z.enum(['on', 'cancelled', 'moved']),
  reported: z.boolean(),
})
export type TrainingDate = z.infer<typeof trainingDate>
export const trainingDates = z.strictObject({ dates: z.array(trainingDate) })

const pieces = z.int().check(z.minimum(0), z.maximum(999))
export const equipmentCounts: z.ZodMiniType<Equipment> = z.strictObject({
  cone: pieces,
  pole: pieces,
  'small-goal': pieces,
  ball: pieces,
  bib: pieces,
})
/** The club's own store, or what one team's bag holds. Sent with the version it was counted from: 0 the first time. */
export const equipmentBody = z.strictObject({ id: uuid, teamId: z.nullable(uuid), counts: equipmentCounts })
export type EquipmentBody = z.infer<typeof equipmentBody>
export const equipment = z.strictObject({
  owners: z.array(z.strictObject({ teamId: z.nullable(uuid), counts: equipmentCounts, version: z.int() })),
})
export type EquipmentList = z.infer<typeof equipment>

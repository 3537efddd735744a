import * as z from 'zod/mini'
import { pressure, versionNumber } from './curricula'
import { sessionPlan } from './plans'
import { instantText, line, localDate, minutes, sha256Hex, teamSize, uuid } from './quantities'

export const GOT_OUT = ['none', 'some', 'half', 'most'] as const
export const CHANGE_CHIPS = [
  'shorter',
  'longer',
  'skipped',
  'easier',
  'harder',
  'less-space',
  'fewer-came',
  'weather',
  'own-idea',
] as const

/** What was coached of one stage: how far it went and how often it got out, by the coach's coarse judgement. */
export const stageReport = z.strictObject({
  stageId: uuid,
  pressureReached: pressure,
  minutes,
  gotOut: z.enum(GOT_OUT),
})

/** A report is an appended fact; a correction names the report it supersedes. */
export const reportBody = z.strictObject({
  teamId: uuid,
  dateId: uuid,
  planId: z.nullable(uuid),
  turnout: teamSize,
  guests: teamSize,
  minutes,
  stages: z.array(stageReport).check(z.maxLength(6)),
  /** A member of the club, or null where there was none. */
  secondAdult: z.nullable(uuid),
  changes: z.array(z.strictObject({ stageId: z.nullable(uuid), chip: z.enum(CHANGE_CHIPS) })).check(z.maxLength(12)),
  supersedes: z.nullable(uuid),
})
export type ReportBody = z.infer<typeof reportBody>

/** Who came, by the coach's tick; never enters the record book. */
export const attendanceBody = z.strictObject({
  teamId: uuid,
  dateId: uuid,
  marks: z.array(z.strictObject({ playerId: uuid, came: z.boolean() })).check(z.minLength(1), z.maxLength(60)),
})

/** The plan the phone computed; the server checks what every plan keeps, never that it would compute the same. */
export const planBody = z.strictObject({
  teamId: uuid,
  dateId: uuid,
  curriculumId: z.nullable(uuid),
  number: z.nullable(versionNumber),
  /** Where it is meant to be set out; without it, the space of the training date. */
  spaceId: z.optional(z.nullable(uuid)),
  inputsHash: sha256Hex,
  plan: sessionPlan,
})

const envelope = { v: z.literal(1), id: uuid, at: instantText, zone: line(60) }
/** Every coach write: the operation's id is the record's id and the key under which it is applied once. */
export const operation = z.discriminatedUnion('op', [
  z.strictObject({ op: z.literal('mark-attendance'), ...envelope, body: attendanceBody }),
  z.strictObject({ op: z.literal('keep-plan'), ...envelope, body: planBody }),
  z.strictObject({ op: z.literal('report-session'), ...envelope, body: reportBody }),
])
export type AttendanceBody = z.infer<typeof attendanceBody>
export type PlanBody = z.infer<typeof planBody>
export type Operation = z.infer<typeof operation>

/** Operations are parsed one by one, so that one bad operation does not hold up the rest. */
export const operationsBody = z.strictObject({
  operations: z.array(z.unknown()).check(z.minLength(1), z.maxLength(200)),
})
export const operationResult = z.strictObject({
  id: z.nullable(uuid),
  status: z.enum(['applied', 'replayed', 'refused', 'unknown']),
  entry: z.nullable(uuid),
  problem: z.nullable(
    z.strictObject({
      code: z.string(),
      title: z.string(),
      status: z.int(),
      errors: z.array(z.strictObject({ pointer: z.string(), detail: z.string() })),
    }),
  ),
})
export const operationResults = z.strictObject({ results: z.array(operationResult) })
export type OperationResult = z.infer<typeof operationResult>

export const recordRow = z.strictObject({
  recordId: uuid,
  dateId: uuid,
  teamId: uuid,
  localDate,
  turnout: z.int(),
  guests: z.int(),
  minutes,
  stages: z.array(stageReport),
  author: line(60),
  secondAdult: z.nullable(line(60)),
  reportedAt: instantText,
  late: z.boolean(),
  standing: z.enum(['stands', 'superseded', 'rival']),
  changes: z.array(z.strictObject({ stageId: z.nullable(uuid), chip: z.enum(CHANGE_CHIPS) })),
  entryId: uuid,
  entrySeq: z.int(),
})
export const recordList = z.strictObject({ records: z.array(recordRow) })
export const recordParams = z.strictObject({ clubId: uuid, recordId: uuid })
export type RecordRow = z.infer<typeof recordRow>

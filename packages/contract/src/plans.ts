import { ACTIVITY_KINDS, PRESSURES } from '@espalier/domain/curriculum'
import type { LineupPlan } from '@espalier/domain/lineups'
import { LANDMARKS } from '@espalier/domain/pitch'
import type { PlannedActivity, SessionPlan, SetOutStop } from '@espalier/domain/session'
import {
  EQUIPMENT_KINDS,
  GROUP_ROLES,
  PAUSE_KINDS,
  PLAN_NOTE_CODES,
  PLANNER_VERSION,
  WALK_LINES,
} from '@espalier/domain/session'
import * as z from 'zod/mini'
import { equipmentCounts } from './places'
import { lengthMm, line, minutes, offsetMm, positionCode, uuid } from './quantities'

/** A child of the squad by id, or a guest by initials; nothing that canonical JSON could not write (RFC 8785, 3.2.2.2). */
const childId = z
  .string()
  .check(
    z.regex(
      /^([0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}|guest:[^\s\p{Cc}\p{Cs}]{1,12})$/u,
      'must be a child or a guest',
    ),
  )
const children = z.array(childId).check(z.maxLength(60))
const tally = z.int().check(z.minimum(0), z.maximum(1_000_000))
const sentence = line(400, 0)
const metresInMm = z.int().check(z.minimum(0), z.maximum(1_000_000)) as unknown as typeof lengthMm

const area = z.strictObject({ upMm: offsetMm, rightMm: offsetMm, lengthMm, widthMm: lengthMm })
const lineups: z.ZodMiniType<LineupPlan> = z.strictObject({
  blocks: z
    .array(
      z.strictObject({
        side: z.enum(['left', 'right']),
        places: z.array(z.strictObject({ position: positionCode, childId })).check(z.maxLength(22)),
        off: children,
      }),
    )
    .check(z.maxLength(60)),
  sumOfSquares: tally,
  sideSumOfSquares: tally,
  changes: tally,
  fairnessProven: z.literal(true),
  changesProven: z.boolean(),
})

const activity: z.ZodMiniType<PlannedActivity> = z.strictObject({
  activityId: z.string().check(z.regex(/^[A-Za-z0-9:_-]{1,60}$/)),
  kind: z.enum(ACTIVITY_KINDS),
  title: line(80),
  detail: line(160, 0),
  startMinute: minutes,
  minutes,
  stageId: z.nullable(uuid),
  pressure: z.nullable(z.enum(PRESSURES)),
  areas: z.array(area).check(z.maxLength(12)),
  groups: z
    .array(
      z.strictObject({
        name: line(60, 0),
        role: z.enum(GROUP_ROLES),
        children,
        area: z.int().check(z.minimum(0), z.maximum(12)),
        bibs: z.boolean(),
      }),
    )
    .check(z.maxLength(24)),
  lineups: z.nullable(lineups),
  roundsABlock: tally,
  takeTurns: tally,
  secondsARound: tally,
  opponents: z.int().check(z.minimum(0), z.maximum(22)),
  besideArea: z.nullable(z.int().check(z.minimum(0), z.maximum(12))),
  conditions: z.array(line(160)).check(z.maxLength(12)),
  points: z.array(line(120)).check(z.maxLength(24)),
})

const stop: z.ZodMiniType<SetOutStop> = z.strictObject({
  number: z.int().check(z.minimum(0), z.maximum(400)),
  item: z.enum([...EQUIPMENT_KINDS, 'bag']),
  instead: z.nullable(z.enum(EQUIPMENT_KINDS)),
  upMm: offsetMm,
  rightMm: offsetMm,
  from: z.enum([...LANDMARKS, 'bag']),
  legs: z
    .array(
      z.strictObject({
        turn: z.enum(['straight', 'left', 'right', 'back']),
        paces: z.int().check(z.minimum(0), z.maximum(1_000)),
        lengthMm: metresInMm,
        upMm: offsetMm,
        rightMm: offsetMm,
        to: z.nullable(z.enum(LANDMARKS)),
        along: z.nullable(z.enum(WALK_LINES)),
        bibAfterPaces: z.nullable(z.int().check(z.minimum(0), z.maximum(1_000))),
      }),
    )
    .check(z.maxLength(12)),
  purpose: sentence,
  mouth: z.nullable(z.enum(['up', 'down', 'left', 'right'])),
  activityIds: z.array(z.string().check(z.maxLength(60))).check(z.maxLength(12)),
})

/** A plan as a phone computed it; what must hold of it is checked by the domain. */
export const sessionPlan: z.ZodMiniType<SessionPlan> = z.strictObject({
  v: z.literal(1),
  planner: z.literal(PLANNER_VERSION),
  totalMinutes: minutes,
  kind: z.enum(['full', 'games-only']),
  stage: z.nullable(
    z.strictObject({
      stageId: uuid,
      reason: z.enum(['named-by-model', 'next', 'again']),
      kind: z.enum(['published', 'study', 'habit', 'club', 'memory', 'computed']),
    }),
  ),
  children,
  sitsOut: children,
  adults: z.int().check(z.minimum(0), z.maximum(20)),
  activities: z.array(activity).check(z.maxLength(12)),
  pauses: z
    .array(z.strictObject({ kind: z.enum(PAUSE_KINDS), title: line(80, 0), startMinute: minutes, minutes }))
    .check(z.maxLength(24)),
  setOut: z.array(stop).check(z.maxLength(400)),
  setOutPaces: tally,
  setOutChecks: z
    .array(
      z.strictObject({
        fromNumber: z.int(),
        toNumber: z.int(),
        paces: z.int().check(z.minimum(0), z.maximum(1_000)),
        lengthMm: metresInMm,
      }),
    )
    .check(z.maxLength(24)),
  paceMm: lengthMm,
  equipmentNeeded: equipmentCounts,
  equipmentShort: equipmentCounts,
  substitutes: z
    .array(z.strictObject({ item: z.enum(EQUIPMENT_KINDS), instead: z.enum(EQUIPMENT_KINDS), count: tally }))
    .check(z.maxLength(12)),
  longestWaitSeconds: tally,
  gameSharePermille: z.int().check(z.minimum(0), z.maximum(1_000)),
  notes: z.array(z.strictObject({ code: z.enum(PLAN_NOTE_CODES), sentence })).check(z.maxLength(60)),
})

import {
  BEHAVIOURS,
  BREAKS,
  type CheckNote,
  type CheckReport,
  LOSS_CAUSES,
  NOTE_CODES,
  PROFILE_IDS,
  type Remedy,
  SEVERITIES,
  SURFACES,
  type TimedStep,
  type Timeline,
  X_COUNTS,
} from '@espalier/domain/check'
import { type BallAction, RUN_STARTS } from '@espalier/domain/pattern'
import type { SourceKind } from '@espalier/domain/quantities'
import * as z from 'zod/mini'
import { innerId, patternDocument, spot } from './patterns'
import { space } from './places'
import { metres, metresPerSecond, metresPerSecondSquared, positionCode, seconds } from './quantities'

/** Error runs that one request plays at most; a page plays more in slices of its own. */
export const CHECK_RUNS_MAX = 100_000
/** No pattern of children is pressed by more (habit: common practice, no source). */
const OPPONENTS_MAX = 6

/** A document to be checked as it stands: nothing of it is kept. */
export const patternCheckBody = z.strictObject({
  document: patternDocument,
  /** A measured space, or null for the pitch the format is drawn on. */
  space: z.nullable(space),
  /** Whose speeds and kicks; by default those of the document's age group. */
  profileId: z.optional(z.enum(PROFILE_IDS)),
  /** By default a normal one. */
  surface: z.optional(z.enum(SURFACES)),
  options: z.strictObject({
    looks: z.boolean(),
    pressure: z.union([
      z.boolean(),
      z.strictObject({
        opponentsMax: z.int().check(z.minimum(1), z.maximum(OPPONENTS_MAX)),
        released: z.enum(['ball-in-play', 'first-touch']),
      }),
    ]),
    /** More runs than `CHECK_RUNS_MAX` are refused by a problem of their own. */
    errorRuns: z.nullable(
      z.strictObject({
        runs: z.int().check(z.minimum(1)),
        seed: z.int().check(z.minimum(0), z.maximum(2 ** 32 - 1)),
      }),
    ),
  }),
})
export type PatternCheckBody = z.infer<typeof patternCheckBody>

const SOURCE_KINDS = {
  published: 'published',
  study: 'study',
  habit: 'habit',
  club: 'club',
  memory: 'memory',
  computed: 'computed',
} as const satisfies { readonly [Kind in SourceKind]: Kind }

const ACTION_KINDS = {
  pass: 'pass',
  'set-back': 'set-back',
  carry: 'carry',
  'dribble-past': 'dribble-past',
  throw: 'throw',
  roll: 'roll',
  dummy: 'dummy',
  shot: 'shot',
} as const satisfies { readonly [Kind in BallAction['kind']]: Kind }

const count = z.int().check(z.minimum(0))
const point = z.strictObject({ x: metres, y: metres })
const aRemedy = { stepId: innerId, position: positionCode, sentence: z.string() }
const runStart = z.enum(RUN_STARTS)
const remedy: z.ZodMiniType<Remedy> = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('start-run'), ...aRemedy, start: runStart }),
  z.strictObject({ kind: z.literal('meet-at'), ...aRemedy, spot }),
  z.strictObject({ kind: z.literal('come-to'), ...aRemedy, spot, start: runStart }),
  z.strictObject({ kind: z.literal('drop-run'), ...aRemedy }),
])

/** Each measured value stands beside its limit and where that is from. */
const measured = {
  value: z.number(),
  limit: z.number(),
  sourceKind: z.enum(SOURCE_KINDS),
  source: z.string(),
  sentence: z.string(),
}
const note: z.ZodMiniType<CheckNote> = z.strictObject({
  code: z.enum(NOTE_CODES),
  severity: z.enum(SEVERITIES),
  stepId: z.nullable(innerId),
  position: z.nullable(positionCode),
  unit: z.enum(['s', 'm', 'degrees', 'touches', 'players']),
  ...measured,
  remedy: z.nullable(remedy),
})

const flight: z.ZodMiniType<TimedStep['flight']> = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('rolls'),
    ball: z.strictObject({ releaseSpeed: metresPerSecond, deceleration: metresPerSecondSquared }),
  }),
  z.strictObject({ kind: z.literal('flies'), duration: seconds }),
  z.strictObject({ kind: z.literal('carried') }),
])
const timedStep: z.ZodMiniType<TimedStep> = z.strictObject({
  stepId: innerId,
  kind: z.enum(ACTION_KINDS),
  actor: positionCode,
  receiver: z.nullable(positionCode),
  startsAt: seconds,
  from: point,
  to: point,
  flight,
  ballArrivesAt: seconds,
  receiverArrivesAt: z.nullable(seconds),
  receivedAt: seconds,
  shortBy: metres,
})
const timeline: z.ZodMiniType<Timeline> = z.strictObject({
  steps: z.array(timedStep),
  tracks: z.array(
    z.strictObject({
      position: positionCode,
      start: point,
      legs: z.array(
        z.strictObject({
          from: point,
          to: point,
          startsAt: seconds,
          endsAt: seconds,
          length: metres,
          runner: z.strictObject({ acceleration: metresPerSecondSquared, topSpeed: metresPerSecond }),
        }),
      ),
    }),
  ),
  endsAt: seconds,
})

type LookCover = NonNullable<CheckReport['looks']>[number]
const cover: z.ZodMiniType<LookCover> = z.strictObject({
  lookId: innerId,
  stepId: innerId,
  by: positionCode,
  ways: z.array(
    z.strictObject({
      letter: z.nullable(z.string()),
      stepIds: z.array(innerId),
      signSeconds: z.nullable(seconds),
      arrives: z.boolean(),
    }),
  ),
  places: z.array(z.strictObject({ at: point, way: z.nullable(count) })),
  counts: z.array(
    z.strictObject({
      opponents: z.literal(X_COUNTS),
      placements: count,
      open: count,
      perMille: z.nullable(count),
      ways: z.array(z.strictObject({ taken: count, lanesOpen: count })),
      holes: z.array(z.strictObject({ at: z.array(point), words: z.string() })),
      sentence: z.string(),
    }),
  ),
  notes: z.array(
    z.strictObject({
      code: z.literal('sign-too-short'),
      severity: z.literal('note'),
      stepId: innerId,
      position: positionCode,
      unit: z.literal('s'),
      ...measured,
    }),
  ),
})

type Pressure = NonNullable<CheckReport['pressure']>
const startPlace = z.strictObject({ at: point, obstacleId: z.nullable(innerId), near: z.nullable(positionCode) })
const aMend = { stepId: innerId, by: positionCode }
const stopped: z.ZodMiniType<NonNullable<Pressure['firstStopped']>> = z.strictObject({
  kind: z.enum(BREAKS),
  stepId: innerId,
  at: seconds,
  by: count,
  from: point,
  where: point,
  stood: z.array(point),
  behaviour: z.enum(BEHAVIOURS),
  opponents: count,
  starts: z.array(startPlace),
  cameFrom: startPlace,
  mends: z.array(
    z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('one-touch'), ...aMend }),
      z.strictObject({ kind: z.literal('look'), ...aMend, free: z.array(positionCode) }),
    ]),
  ),
})
const pressure: z.ZodMiniType<Pressure> = z.strictObject({
  places: z.array(startPlace),
  tried: count,
  behaviours: z.array(
    z.strictObject({ behaviour: z.enum(BEHAVIOURS), worksAgainst: count, stopped: z.nullable(stopped) }),
  ),
  worksAgainst: count,
  firstStopped: z.nullable(stopped),
  sentence: z.string(),
})

const errorRuns: z.ZodMiniType<NonNullable<CheckReport['errorRuns']>> = z.strictObject({
  runs: count,
  gotOut: count,
  share: z.number(),
  standardError: z.number(),
  steps: z.array(z.strictObject({ stepId: innerId, reached: count, lost: z.record(z.enum(LOSS_CAUSES), count) })),
  caution: z.string(),
})

/** What the check says; null for a part that was not asked. Lengths in metres, times in seconds from the restart. */
export const patternCheck: z.ZodMiniType<CheckReport> = z.strictObject({
  checkVersion: z.string(),
  notes: z.array(note),
  timeline,
  looks: z.nullable(z.array(cover)),
  pressure: z.nullable(pressure),
  errorRuns: z.nullable(errorRuns),
})

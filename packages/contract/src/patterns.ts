import type { Answer, BallAction, Look, PatternDocument, PlacedPosition, Step } from '@espalier/domain/pattern'
import { OBSTACLE_KINDS, RESTARTS, RUN_STARTS, SIGNS, TARGET_KINDS } from '@espalier/domain/pattern'
import type { Spot } from '@espalier/domain/pitch'
import { LANDMARKS } from '@espalier/domain/pitch'
import * as z from 'zod/mini'
import { ageGroup, formatId } from './places'
import { lengthMm, line, offsetMm, positionCode, uuid } from './quantities'

export const spot: z.ZodMiniType<Spot> = z.strictObject({
  landmark: z.enum(LANDMARKS),
  upMm: offsetMm,
  rightMm: offsetMm,
})

/** Identifiers inside one document: short, made by the page, unique there. */
export const innerId = z.string().check(z.regex(/^[a-z0-9][a-z0-9-]{0,39}$/, 'must be letters, digits and hyphens'))

const placed: z.ZodMiniType<PlacedPosition> = z.strictObject({ position: positionCode, spot })
const into = z.discriminatedUnion('kind', [
  z.strictObject({ kind: z.literal('feet') }),
  z.strictObject({ kind: z.literal('space'), spot }),
])
const foot = z.enum(['near', 'far', 'either'])
const touches = z.union([z.literal(1), z.literal(2)])

const ballAction: z.ZodMiniType<BallAction> = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('pass'),
    from: positionCode,
    to: positionCode,
    into,
    height: z.enum(['ground', 'air']),
    touches,
    foot,
  }),
  z.strictObject({ kind: z.literal('set-back'), from: positionCode, to: positionCode, into, foot }),
  z.strictObject({ kind: z.literal('carry'), by: positionCode, to: spot, at: z.nullable(innerId) }),
  z.strictObject({ kind: z.literal('dribble-past'), by: positionCode, to: spot, past: innerId }),
  z.strictObject({ kind: z.literal('throw'), from: positionCode, to: positionCode, into }),
  z.strictObject({ kind: z.literal('roll'), from: positionCode, to: positionCode, into }),
  z.strictObject({ kind: z.literal('dummy'), by: positionCode, to: positionCode }),
  z.strictObject({ kind: z.literal('shot'), by: positionCode, target: innerId }),
])

const step: z.ZodMiniType<Step> = z.strictObject({
  stepId: innerId,
  action: ballAction,
  runs: z.array(z.strictObject({ position: positionCode, to: spot, start: z.enum(RUN_STARTS) })).check(z.maxLength(11)),
  point: line(80, 0),
})

const answer: z.ZodMiniType<Answer> = z.strictObject({
  sign: z.enum(SIGNS),
  about: z.nullable(positionCode),
  steps: z.array(step).check(z.maxLength(3)),
  rejoins: innerId,
})
const look: z.ZodMiniType<Look> = z.strictObject({
  lookId: innerId,
  stepId: innerId,
  by: positionCode,
  answers: z.array(answer).check(z.minLength(1), z.maxLength(6)),
})

const teaching = z.strictObject({
  why: line(240, 0),
  good: line(240, 0),
  mistakes: z.array(z.strictObject({ seen: line(160, 0), change: line(160, 0) })).check(z.maxLength(4)),
  question: line(160, 0),
  easier: line(200, 0),
  harder: line(200, 0),
  callWords: z.array(line(24)).check(z.maxLength(12)),
  goLong: line(200, 0),
})

/**
 * Steps of the trunk and of all answers together. The check plays the trunk once for every answer, so this bounds its
 * work; six looks with two answers of two steps beside a trunk of twelve still fit (habit: common practice, no source).
 */
export const STEPS_AND_ANSWERS_MAX = 40

function countSteps({ steps, looks }: Pick<PatternDocument, 'steps' | 'looks'>): number {
  const answers = looks.flatMap((each) => each.answers)
  return answers.reduce((sum, each) => sum + Math.max(1, each.steps.length), steps.length)
}

/** The pattern document, version 1. Shape only; what the steps mean is checked by the domain's rules. */
export const patternDocument: z.ZodMiniType<PatternDocument> = z
  .strictObject({
    v: z.literal(1),
    title: line(80),
    problem: line(160, 0),
    formatId,
    formation: z.string().check(z.regex(/^[1-9](-[1-9]){1,4}$/, 'must be a formation like 2-3-1')),
    ageGroup,
    writtenFor: z.enum(['left', 'right']),
    positions: z.array(placed).check(z.minLength(1), z.maxLength(11)),
    inPossession: z.array(placed).check(z.maxLength(11)),
    onLoss: z.array(placed).check(z.maxLength(11)),
    obstacles: z
      .array(z.strictObject({ obstacleId: innerId, kind: z.enum(OBSTACLE_KINDS), spot }))
      .check(z.maxLength(24)),
    targets: z
      .array(z.strictObject({ targetId: innerId, kind: z.enum(TARGET_KINDS), spot, widthMm: lengthMm }))
      .check(z.maxLength(6)),
    restart: z.enum(RESTARTS),
    steps: z.array(step).check(z.minLength(1), z.maxLength(12)),
    looks: z.array(look).check(z.maxLength(6)),
    teaching,
  })
  .check(
    z.refine((document) => countSteps(document) <= STEPS_AND_ANSWERS_MAX, {
      path: ['looks'],
      message: `holds too many steps: trunk and answers together have at most ${STEPS_AND_ANSWERS_MAX}`,
    }),
  )

export const patternBody = z.strictObject({ id: uuid, document: patternDocument })
export const patternEdit = z.strictObject({ document: patternDocument })
export const patternSummary = z.strictObject({
  patternId: uuid,
  version: z.int(),
  title: line(80),
  problem: line(160, 0),
  formatId,
  formation: z.string(),
  ageGroup,
  steps: z.int(),
  toFix: z.int(),
})
export const patternList = z.strictObject({ patterns: z.array(patternSummary) })
export const patternRow = z.strictObject({ patternId: uuid, version: z.int(), document: patternDocument })
export const patternParams = z.strictObject({ clubId: uuid, patternId: uuid })
export type PatternSummary = z.infer<typeof patternSummary>
export type PatternRow = z.infer<typeof patternRow>
export type PatternBody = z.infer<typeof patternBody>
export type PatternEdit = z.infer<typeof patternEdit>

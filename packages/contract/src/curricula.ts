import type { DraftDocument, ModelSession, Progression, VersionContent } from '@espalier/domain/curriculum'
import { ACTIVITY_KINDS, PRESSURES } from '@espalier/domain/curriculum'
import * as z from 'zod/mini'
import { patternDocument } from './patterns'
import { ageGroup, clubSettings, formatId } from './places'
import { instantText, line, localDate, minutes, sha256Hex, uuid } from './quantities'

export const pressure = z.enum(PRESSURES)
export const activityKind = z.enum(ACTIVITY_KINDS)

const progression: z.ZodMiniType<Progression> = z.strictObject({
  progressionId: uuid,
  title: line(80),
  stages: z
    .array(
      z.strictObject({
        stageId: uuid,
        title: line(80),
        patternId: uuid,
        form: z.discriminatedUnion('kind', [
          z.strictObject({ kind: z.literal('full') }),
          z.strictObject({ kind: z.literal('first-steps'), steps: z.int().check(z.minimum(1), z.maximum(12)) }),
        ]),
        pressure,
        conditions: z.array(line(120)).check(z.maxLength(6)),
      }),
    )
    .check(z.maxLength(12)),
  after: z.array(uuid).check(z.maxLength(6)),
})

const modelSession: z.ZodMiniType<ModelSession> = z.strictObject({
  modelSessionId: uuid,
  title: line(80),
  activities: z
    .array(
      z.strictObject({
        activityId: uuid,
        kind: activityKind,
        title: line(80),
        minutes,
        stageId: z.nullable(uuid),
        conditions: z.array(line(120)).check(z.maxLength(6)),
        points: z.array(line(80)).check(z.maxLength(6)),
      }),
    )
    .check(z.maxLength(8)),
})

export const draftDocument: z.ZodMiniType<DraftDocument> = z.strictObject({
  v: z.literal(1),
  name: line(80),
  ageGroup,
  formatId,
  progressions: z.array(progression).check(z.maxLength(12)),
  modelSessions: z.array(modelSession).check(z.maxLength(24)),
})

export const versionContent: z.ZodMiniType<VersionContent> = z.strictObject({
  v: z.literal(1),
  curriculumId: uuid,
  number: z.int().check(z.minimum(1)),
  name: line(80),
  ageGroup,
  formatId,
  progressions: z.array(progression),
  modelSessions: z.array(modelSession),
  patterns: z.array(z.strictObject({ patternId: uuid, version: z.int(), document: patternDocument })),
  settings: clubSettings,
  checkVersion: line(20),
})

export const curriculumBody = z.strictObject({ id: uuid, document: draftDocument })
export const draftEdit = z.strictObject({ document: draftDocument })
export type CurriculumBody = z.infer<typeof curriculumBody>
export type DraftEdit = z.infer<typeof draftEdit>
export const draftRow = z.strictObject({
  curriculumId: uuid,
  version: z.int(),
  basedOn: z.nullable(z.int()),
  document: draftDocument,
})
export const versionSummary = z.strictObject({
  number: z.int(),
  publishedAt: instantText,
  publishedBy: line(60),
  contentHash: sha256Hex,
  entryId: uuid,
  offered: z.boolean(),
  /** Pending until the signer has signed; "pending" says so on screens. */
  signature: z.enum(['pending', 'signed']),
})
export type VersionSummary = z.infer<typeof versionSummary>
export const curriculumSummary = z.strictObject({
  curriculumId: uuid,
  name: line(80),
  ageGroup,
  formatId,
  stages: z.int(),
  /** Null for those who may not see drafts. */
  draftVersion: z.nullable(z.int()),
  versions: z.array(versionSummary),
})
export const curriculumList = z.strictObject({ curricula: z.array(curriculumSummary) })
export const versionRow = z.strictObject({
  curriculumId: uuid,
  summary: versionSummary,
  content: versionContent,
  /** The exact frozen text (RFC 8785) whose SHA-256 is the content hash. */
  canonical: z.string(),
})
export type CurriculumSummary = z.infer<typeof curriculumSummary>
export type VersionRow = z.infer<typeof versionRow>
export type DraftRow = z.infer<typeof draftRow>

/** Publishing needs the draft's version in If-Match; the key is the publication's id. */
export const publishBody = z.strictObject({ id: uuid })

/** Six digits, as in addresses: far more than anybody publishes, and inside what the database counts to. */
export const versionNumber = z.int().check(z.minimum(1), z.maximum(999_999))

export const adoptionBody = z.strictObject({
  id: uuid,
  curriculumId: uuid,
  number: versionNumber,
  fromDate: localDate,
})

export const curriculumParams = z.strictObject({ clubId: uuid, curriculumId: uuid })
export const versionParams = z.strictObject({
  clubId: uuid,
  curriculumId: uuid,
  number: z.string().check(z.regex(/^[1-9]\d{0,5}$/, 'must be a version number')),
})
export type AdoptionBody = z.infer<typeof adoptionBody>

import type { PatternDocument } from '../pattern'
import { ok, type Result, refuse } from '../quantities'
import type { ClubSettings, DraftDocument, Stage, VersionContent } from './draft'
import { listDraftFaults } from './draft-faults'

/** A pattern as it stands now, with what the check and the rules of teaching say of it. */
export type CheckedPattern = {
  readonly patternId: string
  readonly version: number
  readonly document: PatternDocument
  /** Sentences of the notes to fix; the others never stop a publication. */
  readonly toFix: readonly string[]
  readonly missing: readonly { readonly pointer: string; readonly detail: string }[]
}

/** What stands in the way of a publication, in the order in which it is to be mended. */
export type PublishFaultCode =
  | 'draft-empty'
  | 'draft-has-no-model-session'
  | 'identifier-twice'
  | 'reference-unknown'
  | 'pattern-unknown'
  | 'teaching-missing'
  | 'draft-has-notes-to-fix'

export type PublishFault = { readonly code: PublishFaultCode; readonly pointer: string; readonly detail: string }

/** The code of the first fault speaks for all; each of them says its own. */
export type PublishRefusal =
  | { readonly code: 'nothing-changed' }
  | { readonly code: PublishFaultCode; readonly errors: readonly PublishFault[] }

export type Publication = {
  readonly curriculumId: string
  readonly number: number
  readonly draft: DraftDocument
  readonly patterns: readonly CheckedPattern[]
  readonly settings: ClubSettings
  readonly checkVersion: string
  /** What was published last, so that a second press does not make a version that says nothing new. */
  readonly latest: VersionContent | null
}

/** What of a pattern can stand in the way. */
export type PatternStanding = Pick<CheckedPattern, 'patternId' | 'toFix' | 'missing'> & { readonly title: string }

/**
 * Everything that stands in the way of publishing a draft, so that a page can say it before the press: first what the
 * draft itself lacks, then patterns that are gone, then teaching content, then notes to fix.
 */
export function listPublishFaults(draft: DraftDocument, patterns: readonly PatternStanding[]): readonly PublishFault[] {
  const stages = listStages(draft)
  return [
    ...listGaps(draft, stages),
    ...listDraftFaults(draft),
    ...listUnknownPatterns(stages, patterns),
    ...listPatternFaults(stages, patterns),
  ]
}

/** Freezes a draft by value, or says by name everything that stands in the way. */
export function decidePublish(publication: Publication): Result<VersionContent, PublishRefusal> {
  const { draft, patterns, latest } = publication
  const standing = patterns.map((pattern) => ({ ...pattern, title: pattern.document.title }))
  const errors = listPublishFaults(draft, standing)
  const [first] = errors
  if (first !== undefined) return refuse({ code: first.code, errors })
  const used = firstUses(listStages(draft)).map(
    ({ stage }) => patterns.find(({ patternId }) => patternId === stage.patternId)!,
  )
  const content = contentOf(publication, used)
  return saysNothingNew(content, latest) ? refuse({ code: 'nothing-changed' }) : ok(content)
}

function listGaps(draft: DraftDocument, stages: readonly PlacedStage[]): readonly PublishFault[] {
  const gaps: PublishFault[] = []
  if (stages.length === 0) {
    gaps.push({ code: 'draft-empty', pointer: '/progressions', detail: 'The curriculum has no stage yet.' })
  } else {
    // Of a draft without any stage this would say the same once more.
    for (const [at, { title, stages: own }] of draft.progressions.entries())
      if (own.length === 0)
        gaps.push({
          code: 'draft-empty',
          pointer: `/progressions/${at}/stages`,
          detail: `“${title}” has no stage yet.`,
        })
  }
  if (draft.modelSessions.length === 0)
    gaps.push({
      code: 'draft-has-no-model-session',
      pointer: '/modelSessions',
      detail: 'The curriculum has no model session yet.',
    })
  return gaps
}

function listUnknownPatterns(
  stages: readonly PlacedStage[],
  patterns: readonly PatternStanding[],
): readonly PublishFault[] {
  return stages
    .filter(({ stage }) => !patterns.some(({ patternId }) => patternId === stage.patternId))
    .map(({ stage, pointer }) => ({
      code: 'pattern-unknown',
      pointer: `${pointer}/patternId`,
      detail: `“${stage.title}” names a pattern that is not there`,
    }))
}

/** Each pattern once, at its first stage. */
function listPatternFaults(
  stages: readonly PlacedStage[],
  patterns: readonly PatternStanding[],
): readonly PublishFault[] {
  const used = firstUses(stages).flatMap(({ stage, pointer }) =>
    patterns.filter(({ patternId }) => patternId === stage.patternId).map((pattern) => ({ pattern, pointer })),
  )
  const said = (code: PublishFaultCode, listDetails: (pattern: PatternStanding) => readonly string[]) =>
    used.flatMap(({ pattern, pointer }) =>
      listDetails(pattern).map((detail): PublishFault => ({ code, pointer, detail: `“${pattern.title}”: ${detail}` })),
    )
  return [
    ...said('teaching-missing', ({ missing }) => missing.map(({ detail }) => detail)),
    ...said('draft-has-notes-to-fix', ({ toFix }) => toFix),
  ]
}

type PlacedStage = { readonly stage: Stage; readonly pointer: string }

function listStages(draft: DraftDocument): readonly PlacedStage[] {
  return draft.progressions.flatMap((progression, at) =>
    progression.stages.map((stage, place) => ({ stage, pointer: `/progressions/${at}/stages/${place}` })),
  )
}

function firstUses(stages: readonly PlacedStage[]): readonly PlacedStage[] {
  return stages.filter(({ stage }, at) => stages.findIndex((other) => other.stage.patternId === stage.patternId) === at)
}

function contentOf(publication: Publication, used: readonly CheckedPattern[]): VersionContent {
  const { draft, curriculumId, number, settings, checkVersion } = publication
  return {
    v: 1,
    curriculumId,
    number,
    name: draft.name,
    ageGroup: draft.ageGroup,
    formatId: draft.formatId,
    progressions: draft.progressions,
    modelSessions: draft.modelSessions,
    patterns: used.map(({ patternId, version, document }) => ({ patternId, version, document })),
    settings,
    checkVersion,
  }
}

/** Both come from one shape and the same parser, so equal contents have equal members; their order may differ. */
function saysNothingNew(content: VersionContent, latest: VersionContent | null): boolean {
  return latest !== null && sameValue({ ...content, number: 0 }, { ...latest, number: 0 })
}

function sameValue(a: unknown, b: unknown): boolean {
  if (a === b) return true
  if (typeof a !== 'object' || typeof b !== 'object' || a === null || b === null) return false
  if (Array.isArray(a) !== Array.isArray(b)) return false
  const names = Object.keys(a)
  if (names.length !== Object.keys(b).length) return false
  const left = a as Readonly<Record<string, unknown>>
  const right = b as Readonly<Record<string, unknown>>
  return names.every((name) => Object.hasOwn(right, name) && sameValue(left[name], right[name]))
}

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

export type PublishFault = { readonly pointer: string; readonly detail: string }

export type PublishRefusal =
  | { readonly code: 'draft-empty' | 'draft-has-no-model-session' | 'nothing-changed' }
  | {
      readonly code:
        | 'identifier-twice'
        | 'reference-unknown'
        | 'pattern-unknown'
        | 'teaching-missing'
        | 'draft-has-notes-to-fix'
      readonly errors: readonly PublishFault[]
    }

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

/**
 * Freezes a draft by value, or says by name what stands in the way: first what the draft itself lacks, then patterns
 * that are gone, then teaching content, then notes to fix.
 */
export function decidePublish(publication: Publication): Result<VersionContent, PublishRefusal> {
  const { draft } = publication
  const stages = listStages(draft)
  if (stages.length === 0) return refuse({ code: 'draft-empty' })
  if (draft.modelSessions.length === 0) return refuse({ code: 'draft-has-no-model-session' })
  const faults = listDraftFaults(draft)
  const twice = faults.filter(({ code }) => code === 'identifier-twice')
  if (twice.length > 0) return refuse({ code: 'identifier-twice', errors: twice })
  if (faults.length > 0) return refuse({ code: 'reference-unknown', errors: faults })
  return checkPatterns(publication, stages)
}

function checkPatterns(
  publication: Publication,
  stages: readonly PlacedStage[],
): Result<VersionContent, PublishRefusal> {
  const byId = new Map(publication.patterns.map((pattern) => [pattern.patternId, pattern]))
  const unknown = stages.flatMap(({ stage, pointer }): readonly PublishFault[] =>
    byId.has(stage.patternId)
      ? []
      : [{ pointer: `${pointer}/patternId`, detail: `“${stage.title}” names a pattern that is not there` }],
  )
  if (unknown.length > 0) return refuse({ code: 'pattern-unknown', errors: unknown })
  const used = firstUses(stages).map(({ stage, pointer }) => ({ pattern: byId.get(stage.patternId)!, pointer }))
  const missing = used.flatMap(({ pattern, pointer }) =>
    pattern.missing.map(({ detail }) => ({ pointer, detail: `“${pattern.document.title}”: ${detail}` })),
  )
  if (missing.length > 0) return refuse({ code: 'teaching-missing', errors: missing })
  const toFix = used.flatMap(({ pattern, pointer }) =>
    pattern.toFix.map((sentence) => ({ pointer, detail: `“${pattern.document.title}”: ${sentence}` })),
  )
  if (toFix.length > 0) return refuse({ code: 'draft-has-notes-to-fix', errors: toFix })
  const content = contentOf(
    publication,
    used.map(({ pattern }) => pattern),
  )
  return saysNothingNew(content, publication.latest) ? refuse({ code: 'nothing-changed' }) : ok(content)
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

import {
  type CurriculumSummary,
  type DraftRow as DraftOnWire,
  draftDocument,
  type VersionSummary,
} from '@espalier/contract/curricula'
import type { DraftDocument } from '@espalier/domain/curriculum'
import * as z from 'zod/mini'
import type { DraftRow, PublishedCurriculumRow, VersionRow, VersionWithContent } from './queries'

export function openStoredDraft(doc: unknown): DraftDocument {
  return z.parse(draftDocument, doc)
}

export function draftBodyOf(row: DraftRow): DraftOnWire {
  return {
    curriculumId: row.curriculum_id,
    version: row.version,
    basedOn: row.based_on,
    document: openStoredDraft(row.doc),
  }
}

export function versionSummaryOf(row: VersionRow): VersionSummary {
  return {
    number: row.number,
    publishedAt: row.published_at.toISOString(),
    publishedBy: row.published_by,
    contentHash: row.content_hash.toString('hex'),
    entryId: row.entry_id,
    offered: row.offered,
    signature: row.signed ? 'signed' : 'pending',
  }
}

export function curriculumSummaryOf(
  row: PublishedCurriculumRow & { readonly draft_version?: number },
  versions: readonly VersionRow[],
): CurriculumSummary {
  return {
    curriculumId: row.curriculum_id,
    name: row.name,
    ageGroup: row.age_group,
    formatId: row.format_id,
    stages: row.stages,
    draftVersion: row.draft_version ?? null,
    versions: versions.filter((version) => version.curriculum_id === row.curriculum_id).map(versionSummaryOf),
  }
}

/** The answer's text, with the frozen content in it byte for byte as it was published. */
export function versionTextOf(row: VersionWithContent): string {
  const members = [
    `"curriculumId":${JSON.stringify(row.curriculum_id)}`,
    `"summary":${JSON.stringify(versionSummaryOf(row))}`,
    `"content":${row.content}`,
    `"canonical":${JSON.stringify(row.content)}`,
  ]
  return `{${members.join(',')}}`
}

import type { Problem } from '@espalier/contract/problems'
import type { DraftDocument } from '@espalier/domain/curriculum'

/** What stands in the way of a publication, with the pattern to mend where it is one's. */
export type RefusalLine = { readonly detail: string; readonly patternId: string | null }

/** Lines that speak of one pattern, so that the way to it is shown once. */
export type RefusalGroup = { readonly patternId: string | null; readonly details: readonly string[] }

/** A refusal's errors as lines; their pointers lead to the stage, and the stage names its pattern. */
export function refusalLines(problem: Problem, draft: DraftDocument): readonly RefusalLine[] {
  return (problem.errors ?? []).map(({ pointer, detail }) => {
    const stage = /^\/progressions\/(\d+)\/stages\/(\d+)/.exec(pointer)
    const found = stage === null ? undefined : draft.progressions[Number(stage[1])]?.stages[Number(stage[2])]
    return { detail, patternId: problem.code === 'pattern-unknown' ? null : (found?.patternId ?? null) }
  })
}

export function refusalGroups(problem: Problem, draft: DraftDocument): readonly RefusalGroup[] {
  const lines = refusalLines(problem, draft)
  return [...new Set(lines.map(({ patternId }) => patternId))].map((patternId) => ({
    patternId,
    details: lines.filter((line) => line.patternId === patternId).map(({ detail }) => detail),
  }))
}

import type { DraftDocument } from '@espalier/domain/curriculum'

/** One thing in the way, as the domain finds it and as a refusal carries it. */
export type FaultOnWire = {
  readonly pointer: string
  readonly detail: string
  readonly code?: string | undefined
}

/** Lines that speak of one pattern, so that the way to it is shown once; null for what is mended in the draft itself. */
export type FaultGroup = { readonly patternId: string | null; readonly details: readonly string[] }

/** What of a pattern is mended on the pattern's own page. */
const PATTERN_FAULTS: readonly (string | undefined)[] = ['teaching-missing', 'draft-has-notes-to-fix']

/** Faults by the pattern they speak of: their pointers lead to the stage, and the stage names its pattern. */
export function faultGroups(faults: readonly FaultOnWire[], draft: DraftDocument): readonly FaultGroup[] {
  const lines = faults.map(({ code, pointer, detail }) => {
    const stage = PATTERN_FAULTS.includes(code) ? /^\/progressions\/(\d+)\/stages\/(\d+)/.exec(pointer) : null
    const found = stage === null ? undefined : draft.progressions[Number(stage[1])]?.stages[Number(stage[2])]
    return { detail, patternId: found?.patternId ?? null }
  })
  return [...new Set(lines.map(({ patternId }) => patternId))].map((patternId) => ({
    patternId,
    details: lines.filter((line) => line.patternId === patternId).map(({ detail }) => detail),
  }))
}

import type { Stage } from '@espalier/domain/curriculum'
import { firstSteps, mirrorPattern, type PatternDocument } from '@espalier/domain/pattern'
import type { Side } from '@espalier/domain/pitch'
import type { Kit } from '@espalier/domain/session'

export type StagePattern = { readonly stage: Stage; readonly document: PatternDocument }

/** A stage of the version the team follows, with its pattern cut to the steps it trains; null where there is none. */
export function stagePattern(kit: Kit, stageId: string | null): StagePattern | null {
  const content = kit.adopted?.content
  const stage = content?.progressions
    .flatMap((progression) => progression.stages)
    .find((each) => each.stageId === stageId)
  const found = content?.patterns.find((pattern) => pattern.patternId === stage?.patternId)
  if (stage === undefined || found === undefined) return null
  const { form } = stage
  return { stage, document: form.kind === 'full' ? found.document : firstSteps(found.document, form.steps) }
}

/** The pattern as it is played on one side. */
export function onSide(document: PatternDocument, side: Side): PatternDocument {
  return document.writtenFor === side ? document : mirrorPattern(document)
}

import type { PatternSummary } from '@espalier/contract/patterns'
import { type DraftDocument, listDifferences, type VersionContent } from '@espalier/domain/curriculum'
import { curriculaMessage } from '../../messages/curricula'
import { countWordsOf, differenceWords } from './draft-words'

type Publishing = {
  readonly draft: DraftDocument
  readonly patterns: readonly PatternSummary[]
  readonly latest: VersionContent | null
}

/** Patterns a draft uses, each once, in the order of its stages. */
export function usedPatterns(draft: DraftDocument, patterns: readonly PatternSummary[]): readonly PatternSummary[] {
  const ids = new Set(draft.progressions.flatMap(({ stages }) => stages.map(({ patternId }) => patternId)))
  return [...ids].flatMap((id) => patterns.find(({ patternId }) => patternId === id) ?? [])
}

/** What a press on publish will do, in sentences. */
export function publishSentences({ draft, patterns, latest }: Publishing): readonly string[] {
  const used = usedPatterns(draft, patterns)
  const stages = draft.progressions.reduce((sum, progression) => sum + progression.stages.length, 0)
  const whole = curriculaMessage('publishWhole', {
    name: draft.name,
    number: (latest?.number ?? 0) + 1,
    progressions: countWordsOf(draft.progressions.length, 'oneProgression'),
    stages: countWordsOf(stages, 'oneStage'),
    sessions: countWordsOf(draft.modelSessions.length, 'oneSession'),
    patterns: countWordsOf(used.length, 'onePattern'),
  })
  const frozen = used.map(({ title }) => curriculaMessage('publishPattern', { title }))
  return used.length === 0 ? [whole] : [whole, curriculaMessage('publishFrozen', { patterns: frozen.join(', ') })]
}

/** What teams would notice against the version before, in words; nothing for a first version. */
export function differenceSentences({ draft, patterns, latest }: Publishing): readonly string[] {
  if (latest === null) return []
  const versions = usedPatterns(draft, patterns).map(({ patternId, version }) => ({ patternId, version }))
  // Only ids and versions of patterns are compared; their documents do not matter here.
  const newer = { ...latest, ...draft, patterns: versions } as unknown as VersionContent
  return listDifferences(latest, newer).map(differenceWords)
}

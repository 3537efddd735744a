import { compareIds } from '../quantities'
import type { Stage, VersionContent } from './draft'

export type StageDifference = {
  readonly stageId: string
  readonly title: string
  /** A stage keeps its id in every version, so that what changed of it can be said. */
  readonly change: 'added' | 'removed' | 'pattern' | 'pressure' | 'form' | 'title' | 'conditions'
}

/** What a team would notice when it moves from one version to another, stage by stage. Without an older one all is new. */
export function listDifferences(older: VersionContent | null, newer: VersionContent): readonly StageDifference[] {
  const before = new Map((older === null ? [] : stagesOf(older)).map((stage) => [stage.stageId, stage]))
  const after = new Map(stagesOf(newer).map((stage) => [stage.stageId, stage]))
  const removed = [...before.values()]
    .filter((stage) => !after.has(stage.stageId))
    .map((stage) => named(stage, 'removed'))
  const changed = [...after.values()].flatMap((stage): readonly StageDifference[] => {
    const old = before.get(stage.stageId)
    return old === undefined ? [named(stage, 'added')] : listChanges(old, stage, older!, newer)
  })
  return [...changed, ...removed.sort((a, b) => compareIds(a.stageId, b.stageId))]
}

function stagesOf(content: VersionContent): readonly Stage[] {
  return content.progressions.flatMap(({ stages }) => stages)
}

function named({ stageId, title }: Stage, change: StageDifference['change']): StageDifference {
  return { stageId, title, change }
}

function listChanges(
  old: Stage,
  stage: Stage,
  older: VersionContent,
  newer: VersionContent,
): readonly StageDifference[] {
  const changes: StageDifference[] = []
  if (old.title !== stage.title) changes.push(named(stage, 'title'))
  if (patternOf(older, old) !== patternOf(newer, stage)) changes.push(named(stage, 'pattern'))
  if (stepsOf(old) !== stepsOf(stage)) changes.push(named(stage, 'form'))
  if (old.pressure !== stage.pressure) changes.push(named(stage, 'pressure'))
  if (old.conditions.join('\n') !== stage.conditions.join('\n')) changes.push(named(stage, 'conditions'))
  return changes
}

function patternOf(content: VersionContent, stage: Stage): string {
  const pattern = content.patterns.find(({ patternId }) => patternId === stage.patternId)
  return `${stage.patternId}/${pattern?.version ?? 0}`
}

function stepsOf({ form }: Stage): number | null {
  return form.kind === 'full' ? null : form.steps
}

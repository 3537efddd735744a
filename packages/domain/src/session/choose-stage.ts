import type { ModelSession, Progression, Stage, VersionContent } from '../curriculum'
import { compareIds, habit } from '../quantities'
import type { StageProgress } from './kit'
import type { StageChoice } from './plan'

/** A stage is practised on so many separate days before the next one comes. Readiness replaces this simple rule later. */
export const DAYS_A_STAGE = habit(3)

export type ChosenEvening = {
  readonly stage: Stage | null
  readonly choice: StageChoice | null
  readonly model: ModelSession | null
}

/**
 * What a team trains next and the model session it runs it in. The stage is the first, in the order of the progressions, that
 * was practised on fewer than three separate days; when all were, the one practised longest ago comes again. The model session
 * is the first that names this stage, else the first that leaves the stage open, else the first of all with the stage it names.
 */
export function chooseEvening(content: VersionContent, progress: readonly StageProgress[]): ChosenEvening {
  const stages = progressionsInOrder(content.progressions).flatMap((progression) => progression.stages)
  const next = nextStage(stages, progress)
  const model = findModel(content.modelSessions, next?.stage.stageId ?? null)
  const named = model?.activities.find((activity) => activity.kind === 'pattern')?.stageId ?? null
  const namedStage = stages.find((stage) => stage.stageId === named)
  if (namedStage && namedStage.stageId !== next?.stage.stageId) {
    return { stage: namedStage, choice: { stageId: namedStage.stageId, reason: 'named-by-model', kind: 'club' }, model }
  }
  if (!next) return { stage: null, choice: null, model }
  return {
    stage: next.stage,
    choice: { stageId: next.stage.stageId, reason: next.reason, kind: DAYS_A_STAGE.kind },
    model,
  }
}

function nextStage(
  stages: readonly Stage[],
  progress: readonly StageProgress[],
): { readonly stage: Stage; readonly reason: 'next' | 'again' } | null {
  const byStage = new Map(progress.map((entry) => [entry.stageId, entry]))
  const unpractised = stages.find((stage) => (byStage.get(stage.stageId)?.sessions ?? 0) < DAYS_A_STAGE.value)
  if (unpractised) return { stage: unpractised, reason: 'next' }
  let again: Stage | null = null
  for (const stage of stages) {
    const last = byStage.get(stage.stageId)?.lastDate ?? ''
    if (!again || compareIds(last, byStage.get(again.stageId)?.lastDate ?? '') < 0) again = stage
  }
  return again ? { stage: again, reason: 'again' } : null
}

function findModel(models: readonly ModelSession[], stageId: string | null): ModelSession | null {
  const trains = (model: ModelSession, wanted: string | null) =>
    model.activities.some((activity) => activity.kind === 'pattern' && activity.stageId === wanted)
  return (
    (stageId === null ? undefined : models.find((model) => trains(model, stageId))) ??
    models.find((model) => trains(model, null)) ??
    models[0] ??
    null
  )
}

/** Progressions with what comes first before what comes after; otherwise as the TD wrote them. A circle keeps the written order. */
export function progressionsInOrder(progressions: readonly Progression[]): readonly Progression[] {
  const known = new Set(progressions.map((progression) => progression.progressionId))
  const placed = new Set<string>()
  const order: Progression[] = []
  while (order.length < progressions.length) {
    const open = progressions.filter((progression) => !placed.has(progression.progressionId))
    const free = open.find((progression) => progression.after.every((id) => placed.has(id) || !known.has(id)))
    const next = free ?? open[0]
    if (!next) break
    placed.add(next.progressionId)
    order.push(next)
  }
  return order
}

import type { DraftDocument } from './draft'

export type DraftFault = {
  readonly code: 'identifier-twice' | 'reference-unknown'
  readonly pointer: string
  readonly detail: string
}

/** Ids that stand twice, and names of things that the draft does not have. A draft may be saved with them, not published. */
export function listDraftFaults(draft: DraftDocument): readonly DraftFault[] {
  return [...listTwice(draft), ...listUnknown(draft)]
}

type Named = { readonly id: string; readonly pointer: string }

function listTwice(draft: DraftDocument): readonly DraftFault[] {
  const groups: readonly (readonly Named[])[] = [
    draft.progressions.map(({ progressionId }, at) => ({
      id: progressionId,
      pointer: `/progressions/${at}/progressionId`,
    })),
    draft.progressions.flatMap(({ stages }, at) =>
      stages.map(({ stageId }, place) => ({ id: stageId, pointer: `/progressions/${at}/stages/${place}/stageId` })),
    ),
    draft.modelSessions.map(({ modelSessionId }, at) => ({
      id: modelSessionId,
      pointer: `/modelSessions/${at}/modelSessionId`,
    })),
    draft.modelSessions.flatMap(({ activities }, at) =>
      activities.map(({ activityId }, place) => ({
        id: activityId,
        pointer: `/modelSessions/${at}/activities/${place}/activityId`,
      })),
    ),
  ]
  return groups.flatMap((group) =>
    group.flatMap(({ id, pointer }, at): readonly DraftFault[] =>
      group.findIndex((other) => other.id === id) === at
        ? []
        : [{ code: 'identifier-twice', pointer, detail: 'stands twice' }],
    ),
  )
}

function listUnknown(draft: DraftDocument): readonly DraftFault[] {
  const stageIds = draft.progressions.flatMap(({ stages }) => stages.map(({ stageId }) => stageId))
  const after = draft.progressions.flatMap((progression, at) =>
    progression.after.flatMap((id, place): readonly DraftFault[] => {
      const pointer = `/progressions/${at}/after/${place}`
      if (!draft.progressions.some(({ progressionId }) => progressionId === id))
        return [{ code: 'reference-unknown', pointer, detail: 'is no progression of this curriculum' }]
      if (comesAfter(draft, id, progression.progressionId))
        return [{ code: 'reference-unknown', pointer, detail: 'waits for this progression itself' }]
      return []
    }),
  )
  const named = draft.modelSessions.flatMap((session, at) =>
    session.activities.flatMap(({ stageId }, place): readonly DraftFault[] =>
      stageId === null || stageIds.includes(stageId)
        ? []
        : [
            {
              code: 'reference-unknown',
              pointer: `/modelSessions/${at}/activities/${place}/stageId`,
              detail: 'is no stage of this curriculum',
            },
          ],
    ),
  )
  return [...after, ...named]
}

/** Whether one progression is another or waits for it, by whatever way round. */
function comesAfter(draft: DraftDocument, id: string, other: string, seen: ReadonlySet<string> = new Set()): boolean {
  if (id === other) return true
  if (seen.has(id)) return false
  const progression = draft.progressions.find(({ progressionId }) => progressionId === id)
  const next = new Set([...seen, id])
  return (progression?.after ?? []).some((earlier) => comesAfter(draft, earlier, other, next))
}

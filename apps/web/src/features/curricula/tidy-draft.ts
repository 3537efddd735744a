import { draftDocument } from '@espalier/contract/curricula'
import { type DraftDocument, listDraftFaults } from '@espalier/domain/curriculum'
import { POINT_WORDS_MAX } from '@espalier/domain/pattern'
import * as z from 'zod/mini'
import { curriculaMessage } from '../../messages/curricula'
import { countWords } from '../writing/count-words'
import { tidyText } from '../writing/tidy-text'

/** The draft as it is sent: texts tidied, empty lines left out. */
export function tidyDraft(draft: DraftDocument): DraftDocument {
  return {
    ...draft,
    name: tidyText(draft.name),
    progressions: draft.progressions.map((progression) => ({
      ...progression,
      title: tidyText(progression.title),
      stages: progression.stages.map((stage) => ({
        ...stage,
        title: tidyText(stage.title),
        conditions: tidyLines(stage.conditions),
      })),
    })),
    modelSessions: draft.modelSessions.map((session) => ({
      ...session,
      title: tidyText(session.title),
      activities: session.activities.map((activity) => ({
        ...activity,
        title: tidyText(activity.title),
        conditions: tidyLines(activity.conditions),
        points: tidyLines(activity.points),
      })),
    })),
  }
}

function tidyLines(lines: readonly string[]): readonly string[] {
  return lines.map(tidyText).filter((line) => line !== '')
}

export type DraftFault = { readonly pointer: string; readonly detail: string }

/** What keeps a tidy draft from being saved, each with where it is. The API may still find more. */
export function listWrongs(draft: DraftDocument): readonly DraftFault[] {
  const points = draft.modelSessions.flatMap((session, at) =>
    session.activities.flatMap((activity, place) =>
      activity.points.flatMap((point, index): readonly DraftFault[] =>
        countWords(point) <= POINT_WORDS_MAX
          ? []
          : [
              {
                pointer: `/modelSessions/${at}/activities/${place}/points/${index}`,
                detail: curriculaMessage('pointTooLong', { point, most: POINT_WORDS_MAX }),
              },
            ],
      ),
    ),
  )
  const parsed = z.safeParse(draftDocument, draft)
  const shape = parsed.success
    ? []
    : parsed.error.issues.map((issue) => {
        const pointer = `/${issue.path.join('/')}`
        return { pointer, detail: pointerWords(draft, pointer) ?? issue.message }
      })
  return [...shape, ...points, ...listDraftFaults(draft)]
}

/** An empty text says which one it is. */
function pointerWords(draft: DraftDocument, pointer: string): string | null {
  if (pointer === '/name') return curriculaMessage('nameMissing')
  const stage = /^\/progressions\/(\d+)\/stages\/(\d+)\/(title|patternId)$/.exec(pointer)
  if (stage !== null) {
    const progression = draft.progressions[Number(stage[1])]?.title ?? ''
    const values = { number: Number(stage[2]) + 1, progression }
    return curriculaMessage(stage[3] === 'title' ? 'stageTitleMissing' : 'stagePatternMissing', values)
  }
  if (/^\/progressions\/\d+\/title$/.test(pointer)) return curriculaMessage('progressionTitleMissing')
  if (/^\/modelSessions\/\d+\/title$/.test(pointer)) return curriculaMessage('sessionTitleMissing')
  const activity = /^\/modelSessions\/(\d+)\/activities\/(\d+)\/title$/.exec(pointer)
  if (activity === null) return null
  return curriculaMessage('activityTitleMissing', {
    number: Number(activity[2]) + 1,
    session: draft.modelSessions[Number(activity[1])]?.title ?? '',
  })
}

const FILLER = '?'

/** Kept drafts may lack titles that are still to be written; everything else must hold to the shape. */
export const unfinishedDraft: z.ZodMiniType<DraftDocument> = z.custom<DraftDocument>(
  (value) => z.safeParse(draftDocument, withoutGaps(value)).success,
)

function withoutGaps(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(withoutGaps)
  if (typeof value !== 'object' || value === null) return value
  return Object.fromEntries(
    Object.entries(value).map(([name, part]) =>
      (name === 'title' || name === 'name') && part === '' ? [name, FILLER] : [name, withoutGaps(part)],
    ),
  )
}

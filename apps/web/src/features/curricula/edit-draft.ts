import type { DraftDocument, ModelActivity, ModelSession, Progression, Stage } from '@espalier/domain/curriculum'
import type { FormatId } from '@espalier/domain/formats'
import { minutes } from '@espalier/domain/quantities'
import { curriculaMessage } from '../../messages/curricula'
import { moved, removed, replaced } from '../writing/list-edits'

/** One change of a draft as data. Ids of what is new come with the change, so that the reducer stays pure. */
export type DraftChange =
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'age-group'; readonly ageGroup: string }
  | { readonly kind: 'format'; readonly formatId: FormatId }
  | { readonly kind: 'add-progression'; readonly id: string }
  | { readonly kind: 'progression'; readonly at: number; readonly title: string }
  | { readonly kind: 'comes-after'; readonly at: number; readonly id: string; readonly after: boolean }
  | { readonly kind: 'move-progression'; readonly at: number; readonly by: -1 | 1 }
  | { readonly kind: 'remove-progression'; readonly at: number }
  | { readonly kind: 'add-stage'; readonly progression: number; readonly id: string; readonly pattern: PatternChoice }
  | { readonly kind: 'stage'; readonly progression: number; readonly at: number; readonly stage: Stage }
  | {
      readonly kind: 'stage-pattern'
      readonly progression: number
      readonly at: number
      readonly before: PatternChoice | undefined
      readonly pattern: PatternChoice
    }
  | { readonly kind: 'move-stage'; readonly progression: number; readonly at: number; readonly by: -1 | 1 }
  | { readonly kind: 'remove-stage'; readonly progression: number; readonly at: number }
  | { readonly kind: 'add-session'; readonly id: string }
  | { readonly kind: 'session'; readonly at: number; readonly title: string }
  | { readonly kind: 'move-session'; readonly at: number; readonly by: -1 | 1 }
  | { readonly kind: 'remove-session'; readonly at: number }
  | { readonly kind: 'add-activity'; readonly session: number; readonly id: string }
  | { readonly kind: 'activity'; readonly session: number; readonly at: number; readonly activity: ModelActivity }
  | { readonly kind: 'move-activity'; readonly session: number; readonly at: number; readonly by: -1 | 1 }
  | { readonly kind: 'remove-activity'; readonly session: number; readonly at: number }

export type PatternChoice = { readonly patternId: string; readonly title: string }

/** Minutes of a new activity (habit: common practice, no source). */
const MINUTES = minutes(15)

export function changeDraft(draft: DraftDocument, change: DraftChange): DraftDocument {
  switch (change.kind) {
    case 'name':
      return { ...draft, name: change.text }
    case 'age-group':
      return { ...draft, ageGroup: change.ageGroup }
    case 'format':
      return { ...draft, formatId: change.formatId }
    case 'add-progression':
    case 'progression':
    case 'comes-after':
    case 'move-progression':
    case 'remove-progression':
      return changeProgressions(draft, change)
    case 'add-stage':
    case 'stage':
    case 'stage-pattern':
    case 'move-stage':
    case 'remove-stage':
      return changeStages(draft, change)
    case 'add-session':
    case 'session':
    case 'move-session':
    case 'remove-session':
      return changeSessions(draft, change)
    case 'add-activity':
    case 'activity':
    case 'move-activity':
    case 'remove-activity':
      return changeActivities(draft, change)
  }
}

type ChangeOf<Kind extends DraftChange['kind']> = Extract<DraftChange, { readonly kind: Kind }>

function changeProgressions(
  draft: DraftDocument,
  change: ChangeOf<'add-progression' | 'progression' | 'comes-after' | 'move-progression' | 'remove-progression'>,
): DraftDocument {
  const { progressions } = draft
  const withList = (list: readonly Progression[]) => ({ ...draft, progressions: list })
  if (change.kind === 'add-progression') {
    const title = curriculaMessage('newProgression', { number: progressions.length + 1 })
    return withList([...progressions, { progressionId: change.id, title, stages: [], after: [] }])
  }
  const progression = progressions[change.at]
  if (progression === undefined) return draft
  switch (change.kind) {
    case 'progression':
      return withList(replaced(progressions, change.at, { ...progression, title: change.title }))
    case 'comes-after': {
      const others = progression.after.filter((id) => id !== change.id)
      const after = change.after ? [...others, change.id] : others
      return withList(replaced(progressions, change.at, { ...progression, after }))
    }
    case 'move-progression':
      return withList(moved(progressions, change.at, change.by))
    case 'remove-progression': {
      const left = removed(progressions, change.at).map((each) => ({
        ...each,
        after: each.after.filter((id) => id !== progression.progressionId),
      }))
      return freeOfLostStages(withList(left))
    }
  }
}

function changeStages(
  draft: DraftDocument,
  change: ChangeOf<'add-stage' | 'stage' | 'stage-pattern' | 'move-stage' | 'remove-stage'>,
): DraftDocument {
  const progression = draft.progressions[change.progression]
  if (progression === undefined) return draft
  const withStages = (stages: readonly Stage[]): DraftDocument => ({
    ...draft,
    progressions: replaced(draft.progressions, change.progression, { ...progression, stages }),
  })
  switch (change.kind) {
    case 'add-stage':
      return withStages([...progression.stages, nextStage(progression, change)])
    case 'stage':
      return withStages(replaced(progression.stages, change.at, change.stage))
    case 'stage-pattern': {
      const stage = progression.stages[change.at]
      if (stage === undefined) return draft
      return withStages(replaced(progression.stages, change.at, withPattern(stage, change)))
    }
    case 'move-stage':
      return withStages(moved(progression.stages, change.at, change.by))
    case 'remove-stage':
      return freeOfLostStages(withStages(removed(progression.stages, change.at)))
  }
}

/** The next rung: the same pattern as the stage before, or the first pattern without pressure. */
function nextStage(progression: Progression, { id, pattern }: ChangeOf<'add-stage'>): Stage {
  const before = progression.stages.at(-1)
  if (before !== undefined) return { ...before, stageId: id, title: '', conditions: [] }
  return {
    stageId: id,
    title: pattern.title,
    patternId: pattern.patternId,
    form: { kind: 'full' },
    pressure: 'none',
    conditions: [],
  }
}

/** A stage that is still called after its pattern is called after the new one; fewer steps than it trained are all of them. */
function withPattern(stage: Stage, { before, pattern }: ChangeOf<'stage-pattern'>): Stage {
  const title = stage.title === '' || stage.title === before?.title ? pattern.title : stage.title
  return { ...stage, title, patternId: pattern.patternId, form: { kind: 'full' } }
}

function changeSessions(
  draft: DraftDocument,
  change: ChangeOf<'add-session' | 'session' | 'move-session' | 'remove-session'>,
): DraftDocument {
  const { modelSessions } = draft
  const withList = (list: readonly ModelSession[]) => ({ ...draft, modelSessions: list })
  if (change.kind === 'add-session') {
    const title = curriculaMessage('newSession', { number: modelSessions.length + 1 })
    return withList([...modelSessions, { modelSessionId: change.id, title, activities: [] }])
  }
  const session = modelSessions[change.at]
  if (session === undefined) return draft
  switch (change.kind) {
    case 'session':
      return withList(replaced(modelSessions, change.at, { ...session, title: change.title }))
    case 'move-session':
      return withList(moved(modelSessions, change.at, change.by))
    case 'remove-session':
      return withList(removed(modelSessions, change.at))
  }
}

function changeActivities(
  draft: DraftDocument,
  change: ChangeOf<'add-activity' | 'activity' | 'move-activity' | 'remove-activity'>,
): DraftDocument {
  const session = draft.modelSessions[change.session]
  if (session === undefined) return draft
  const withActivities = (activities: readonly ModelActivity[]): DraftDocument => ({
    ...draft,
    modelSessions: replaced(draft.modelSessions, change.session, { ...session, activities }),
  })
  switch (change.kind) {
    case 'add-activity':
      return withActivities([...session.activities, newActivity(session, change.id)])
    case 'activity':
      return withActivities(replaced(session.activities, change.at, change.activity))
    case 'move-activity':
      return withActivities(moved(session.activities, change.at, change.by))
    case 'remove-activity':
      return withActivities(removed(session.activities, change.at))
  }
}

/** A session begins and ends with a game, with the pattern between (habit: common practice, no source). */
function newActivity(session: ModelSession, activityId: string): ModelActivity {
  const kind = session.activities.length === 1 ? 'pattern' : 'small-sided-game'
  const title = curriculaMessage(kind === 'pattern' ? 'newPatternActivity' : 'newGameActivity')
  return { activityId, kind, title, minutes: MINUTES, stageId: null, conditions: [], points: [] }
}

/** An activity whose stage is gone goes by the team's progress instead. */
function freeOfLostStages(draft: DraftDocument): DraftDocument {
  const known = new Set(draft.progressions.flatMap(({ stages }) => stages.map(({ stageId }) => stageId)))
  const modelSessions = draft.modelSessions.map((session) => ({
    ...session,
    activities: session.activities.map((activity) =>
      activity.stageId === null || known.has(activity.stageId) ? activity : { ...activity, stageId: null },
    ),
  }))
  return { ...draft, modelSessions }
}

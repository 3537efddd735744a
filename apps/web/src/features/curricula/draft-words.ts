import type { ACTIVITY_KINDS, DraftDocument, PRESSURES, Stage, StageDifference } from '@espalier/domain/curriculum'
import { formatOf } from '@espalier/domain/formats'
import { curriculaMessage } from '../../messages/curricula'

export const PRESSURE_WORDS = {
  none: 'pressureNone',
  poles: 'pressurePoles',
  shadow: 'pressureShadow',
  x1: 'pressureX1',
  x2: 'pressureX2',
  x3: 'pressureX3',
  x4: 'pressureX4',
  x5: 'pressureX5',
  x6: 'pressureX6',
} as const satisfies Record<(typeof PRESSURES)[number], string>

export const ACTIVITY_WORDS = {
  'small-sided-game': 'kindSmallSidedGame',
  rondo: 'kindRondo',
  'keep-ball': 'kindKeepBall',
  pattern: 'kindPattern',
  'build-out-game': 'kindBuildOutGame',
  'conditioned-game': 'kindConditionedGame',
} as const satisfies Record<(typeof ACTIVITY_KINDS)[number], string>

const CHANGE_WORDS = {
  added: 'changeAdded',
  removed: 'changeRemoved',
  pattern: 'changePattern',
  pressure: 'changePressure',
  form: 'changeForm',
  title: 'changeTitle',
  conditions: 'changeConditions',
} as const satisfies Record<StageDifference['change'], string>

export function pressureWord(pressure: Stage['pressure']): string {
  return curriculaMessage(PRESSURE_WORDS[pressure])
}

/** "the whole pattern" or "its first 3 steps". */
export function formWords({ form }: Stage): string {
  return form.kind === 'full'
    ? curriculaMessage('formFull')
    : curriculaMessage(form.steps === 1 ? 'formFirstOne' : 'formFirst', { steps: form.steps })
}

export function differenceWords({ title, change }: StageDifference): string {
  return curriculaMessage(CHANGE_WORDS[change], { title })
}

/** "2 stages", "1 stage". */
export function countWordsOf(count: number, one: 'oneStage' | 'oneSession' | 'oneProgression' | 'onePattern'): string {
  const many = {
    oneStage: 'manyStages',
    oneSession: 'manySessions',
    oneProgression: 'manyProgressions',
    onePattern: 'manyPatterns',
  } as const
  return count === 1 ? curriculaMessage(one) : curriculaMessage(many[one], { count })
}

/** A whole draft as lines of plain words, to lay two of them side by side. */
export function draftLines(draft: DraftDocument, patternTitle: (patternId: string) => string): readonly string[] {
  const game = curriculaMessage('gameLine', { age: draft.ageGroup, format: formatOf(draft.formatId).name })
  const stageTitle = (stageId: string | null) =>
    draft.progressions.flatMap(({ stages }) => stages).find((stage) => stage.stageId === stageId)?.title ??
    curriculaMessage('nextStage')
  return [
    draft.name,
    game,
    ...draft.progressions.flatMap(({ title, stages }) => [
      title,
      ...stages.map((stage) =>
        [
          stage.title,
          patternTitle(stage.patternId),
          formWords(stage),
          pressureWord(stage.pressure),
          ...stage.conditions,
        ].join(', '),
      ),
    ]),
    ...draft.modelSessions.flatMap((session) => [
      session.title,
      ...session.activities.map((activity) =>
        [
          curriculaMessage('activityLine', {
            title: activity.title,
            minutes: activity.minutes,
            kind: curriculaMessage(ACTIVITY_WORDS[activity.kind]),
          }),
          ...(activity.kind === 'pattern' ? [stageTitle(activity.stageId)] : []),
          ...activity.conditions,
          ...activity.points,
        ].join(', '),
      ),
    ]),
  ]
}

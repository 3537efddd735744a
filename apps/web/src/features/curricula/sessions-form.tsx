import { ACTIVITY_KINDS, type ModelActivity, type ModelSession } from '@espalier/domain/curriculum'
import { POINT_WORDS_MAX } from '@espalier/domain/pattern'
import { minutes } from '@espalier/domain/quantities'
import { newUuid } from '../../api/identifiers'
import { curriculaMessage } from '../../messages/curricula'
import { Button } from '../../ui/button/button'
import { BlankChoice, BlankText, type PartChoice } from '../writing/blank'
import type { DraftFormProps } from './draft-form-props'
import { ACTIVITY_WORDS } from './draft-words'
import { LinesBlank } from './lines-blank'
import { MovePresses } from './move-presses'

/** Model sessions of a draft: an evening as the director would run it. */
export function SessionsForm(props: DraftFormProps) {
  const { draft, onChange } = props
  return (
    <div className="flex flex-col gap-6">
      {draft.modelSessions.map((session, at) => (
        <SessionForm key={session.modelSessionId} {...props} session={session} at={at} />
      ))}
      <Button className="self-start" onClick={() => onChange({ kind: 'add-session', id: newUuid() })}>
        {curriculaMessage('addSession')}
      </Button>
    </div>
  )
}

type SessionFormProps = DraftFormProps & { readonly session: ModelSession; readonly at: number }

function SessionForm(props: SessionFormProps) {
  const { draft, session, at, onChange } = props
  const total = session.activities.reduce((sum, activity) => sum + activity.minutes, 0)
  const full = session.activities.length < 8 ? null : curriculaMessage('activitiesMost')
  return (
    <fieldset className="flex min-w-0 flex-col gap-2">
      <legend className="sr-only">{session.title}</legend>
      <div className="flex flex-wrap items-baseline gap-x-4">
        <BlankText
          label={curriculaMessage('sessionTitle')}
          value={session.title}
          onWrite={(title) => onChange({ kind: 'session', at, title }, `session ${at}`)}
          maxLength={80}
          className="voice-club max-w-text flex-1 text-lead font-[560]"
        />
        <span className="text-small text-ink-soft">{curriculaMessage('minutesTotal', { minutes: total })}</span>
        <MovePresses
          name={session.title}
          at={at}
          count={draft.modelSessions.length}
          onMove={(by) => onChange({ kind: 'move-session', at, by })}
          onDelete={() => onChange({ kind: 'remove-session', at })}
        />
      </div>
      <ol>
        {session.activities.map((activity, place) => (
          <ActivityForm key={activity.activityId} {...props} activity={activity} place={place} />
        ))}
      </ol>
      <Button
        kind="quiet"
        className="self-start"
        offBecause={full}
        onClick={() => onChange({ kind: 'add-activity', session: at, id: newUuid() })}
      >
        {curriculaMessage('addActivity')}
      </Button>
    </fieldset>
  )
}

type ActivityFormProps = SessionFormProps & { readonly activity: ModelActivity; readonly place: number }

function ActivityForm(props: ActivityFormProps) {
  const { draft, session, at, activity, place, onChange } = props
  const set = (next: Partial<ModelActivity>, typingIn?: string) =>
    onChange({ kind: 'activity', session: at, at: place, activity: { ...activity, ...next } }, typingIn)
  const typing = (field: string) => `activity ${activity.activityId} ${field}`
  return (
    <li className="flex gap-3 border-t border-wire py-2">
      <span className="voice-club w-6 shrink-0 pt-1 text-center text-lead text-ink-soft">{place + 1}</span>
      <div className="grid min-w-0 flex-1 gap-x-8 desk:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div className="flex min-w-0 flex-col gap-1">
          <BlankText
            label={curriculaMessage('activityTitle', { number: place + 1 })}
            value={activity.title}
            onWrite={(title) => set({ title }, typing('title'))}
            maxLength={80}
            className="voice-club max-w-text font-semibold"
          />
          <p className="flex flex-wrap items-baseline gap-x-2">
            <BlankChoice
              label={curriculaMessage('activityKind')}
              value={activity.kind}
              choices={ACTIVITY_KINDS.map((value) => ({
                value,
                label: curriculaMessage(ACTIVITY_WORDS[value]),
                off: null,
              }))}
              onChoose={(kind) => set(kind === 'pattern' ? { kind } : { kind, stageId: null })}
            />
            <BlankChoice
              label={curriculaMessage('activityMinutes')}
              value={String(activity.minutes)}
              choices={minuteChoices(activity.minutes)}
              onChoose={(chosen) => set({ minutes: minutes(Number(chosen)) })}
            />
            {activity.kind === 'pattern' && (
              <BlankChoice
                label={curriculaMessage('activityStage')}
                value={activity.stageId ?? ''}
                choices={stageChoices(draft)}
                onChoose={(chosen) => set({ stageId: chosen === '' ? null : chosen })}
                className="voice-club"
              />
            )}
          </p>
          <MovePresses
            name={activity.title}
            at={place}
            count={session.activities.length}
            onMove={(by) => onChange({ kind: 'move-activity', session: at, at: place, by })}
            onDelete={() => onChange({ kind: 'remove-activity', session: at, at: place })}
          />
        </div>
        <div className="flex min-w-0 flex-col gap-1">
          <LinesBlank
            label={curriculaMessage('conditions')}
            hint={curriculaMessage('conditionsHint')}
            name={`conditions/${activity.activityId}`}
            lines={activity.conditions}
            most={6}
            onWrite={(conditions) => set({ conditions }, typing('conditions'))}
          />
          <LinesBlank
            label={curriculaMessage('points')}
            hint={curriculaMessage('pointsHint', { most: POINT_WORDS_MAX })}
            name={`points/${activity.activityId}`}
            lines={activity.points}
            most={6}
            wordsMost={POINT_WORDS_MAX}
            onWrite={(points) => set({ points }, typing('points'))}
          />
        </div>
      </div>
    </li>
  )
}

function stageChoices(draft: DraftFormProps['draft']): readonly PartChoice[] {
  const stages = draft.progressions.flatMap(({ title, stages: list }) =>
    list.map((stage) => ({ value: stage.stageId, label: stage.title, off: null, group: title })),
  )
  return [{ value: '', label: curriculaMessage('nextStage'), off: null }, ...stages]
}

/** Every fifth minute up to an hour, and whatever stands there now. */
function minuteChoices(current: number): readonly PartChoice[] {
  const usual = Array.from({ length: 12 }, (_, index) => (index + 1) * 5)
  const all = usual.includes(current) ? usual : [...usual, current].sort((one, other) => one - other)
  return all.map((value) => ({
    value: String(value),
    label: curriculaMessage('minutes', { minutes: value }),
    off: null,
  }))
}

import { PRESSURES, type Progression, type Stage } from '@espalier/domain/curriculum'
import { formatOf } from '@espalier/domain/formats'
import { newUuid } from '../../api/identifiers'
import { curriculaMessage } from '../../messages/curricula'
import { Button } from '../../ui/button/button'
import { CheckLine } from '../../ui/check-line/check-line'
import { BlankChoice, BlankText, type PartChoice } from '../writing/blank'
import type { DraftFormProps } from './draft-form-props'
import { pressureWord } from './draft-words'
import { LinesBlank } from './lines-blank'
import { MovePresses } from './move-presses'
import { PatternState, patternChoices } from './pattern-choice'

/** Progressions of a draft: stages in order, each on its own wire. */
export function ProgressionsForm(props: DraftFormProps) {
  const { draft, patterns, onChange } = props
  const lacks = patterns.length === 0 ? curriculaMessage('noPatterns') : null
  return (
    <div className="flex flex-col gap-6">
      {draft.progressions.map((progression, at) => (
        <ProgressionForm key={progression.progressionId} {...props} progression={progression} at={at} />
      ))}
      <Button
        className="self-start"
        offBecause={lacks}
        onClick={() => onChange({ kind: 'add-progression', id: newUuid() })}
      >
        {curriculaMessage('addProgression')}
      </Button>
    </div>
  )
}

type ProgressionFormProps = DraftFormProps & { readonly progression: Progression; readonly at: number }

function ProgressionForm(props: ProgressionFormProps) {
  const { draft, patterns, progression, at, onChange } = props
  const first = patterns.find(({ formatId }) => formatId === draft.formatId)
  const earlier = draft.progressions.filter(({ progressionId }) => progressionId !== progression.progressionId)
  return (
    <fieldset className="flex min-w-0 flex-col gap-2">
      <legend className="sr-only">{progression.title}</legend>
      <div className="flex flex-wrap items-baseline gap-x-4">
        <BlankText
          label={curriculaMessage('progressionTitle')}
          value={progression.title}
          onWrite={(title) => onChange({ kind: 'progression', at, title }, `progression ${at}`)}
          maxLength={80}
          className="voice-club max-w-text flex-1 text-lead font-[560]"
        />
        <MovePresses
          name={progression.title}
          at={at}
          count={draft.progressions.length}
          onMove={(by) => onChange({ kind: 'move-progression', at, by })}
          onDelete={() => onChange({ kind: 'remove-progression', at })}
        />
      </div>
      <ol className="flex flex-col">
        {progression.stages.map((stage, place) => (
          <StageForm key={stage.stageId} {...props} stage={stage} place={place} />
        ))}
      </ol>
      <Button
        kind="quiet"
        className="self-start"
        offBecause={
          first === undefined ? curriculaMessage('noPatternOfGame', { format: formatOf(draft.formatId).name }) : null
        }
        onClick={() => first && onChange({ kind: 'add-stage', progression: at, id: newUuid(), pattern: first })}
      >
        {curriculaMessage('addStage')}
      </Button>
      {earlier.map(({ progressionId, title }) => (
        <CheckLine
          key={progressionId}
          name={`after/${progression.progressionId}/${progressionId}`}
          label={curriculaMessage('comesAfter', { title })}
          checked={progression.after.includes(progressionId)}
          onChange={(event) =>
            onChange({ kind: 'comes-after', at, id: progressionId, after: event.currentTarget.checked })
          }
        />
      ))}
    </fieldset>
  )
}

type StageFormProps = ProgressionFormProps & { readonly stage: Stage; readonly place: number }

/** One stage as a sentence: which pattern, how much of it, against what; its conditions below. */
function StageForm(props: StageFormProps) {
  const { clubId, patterns, progression, at, stage, place, onChange } = props
  const set = (next: Partial<Stage>, typingIn?: string) =>
    onChange({ kind: 'stage', progression: at, at: place, stage: { ...stage, ...next } }, typingIn)
  const pattern = patterns.find(({ patternId }) => patternId === stage.patternId)
  return (
    <li className="flex gap-3 border-t border-wire py-2">
      <span className="voice-club w-6 shrink-0 pt-1 text-center text-lead text-ink-soft">{place + 1}</span>
      <div className="grid min-w-0 flex-1 gap-x-8 desk:grid-cols-[minmax(0,3fr)_minmax(0,2fr)]">
        <div className="flex min-w-0 flex-col gap-1">
          <BlankText
            label={curriculaMessage('stageTitle', { number: place + 1 })}
            value={stage.title}
            onWrite={(title) => set({ title }, `stage ${stage.stageId} title`)}
            maxLength={80}
            placeholder={curriculaMessage('stagePlaceholder')}
            className="voice-club max-w-text font-semibold"
          />
          <p className="flex flex-wrap items-baseline gap-x-2">
            <BlankChoice
              label={curriculaMessage('stagePattern')}
              value={stage.patternId}
              choices={patternChoices(patterns, props.draft.formatId, stage.patternId)}
              onChoose={(patternId) => {
                const chosen = patterns.find((each) => each.patternId === patternId)
                if (chosen === undefined) return
                onChange({ kind: 'stage-pattern', progression: at, at: place, before: pattern, pattern: chosen })
              }}
              className="voice-club"
            />
            <BlankChoice
              label={curriculaMessage('stageForm')}
              value={stage.form.kind === 'full' ? 'full' : String(stage.form.steps)}
              choices={formChoices(pattern?.steps ?? 1)}
              onChoose={(chosen) =>
                set({ form: chosen === 'full' ? { kind: 'full' } : { kind: 'first-steps', steps: Number(chosen) } })
              }
            />
            <BlankChoice
              label={curriculaMessage('stagePressure')}
              value={stage.pressure}
              choices={PRESSURES.map((value) => ({ value, label: pressureWord(value), off: null }))}
              onChoose={(pressure) => set({ pressure })}
            />
          </p>
          <PatternState clubId={clubId} pattern={pattern} />
          <MovePresses
            name={stage.title}
            at={place}
            count={progression.stages.length}
            onMove={(by) => onChange({ kind: 'move-stage', progression: at, at: place, by })}
            onDelete={() => onChange({ kind: 'remove-stage', progression: at, at: place })}
          />
        </div>
        <LinesBlank
          label={curriculaMessage('conditions')}
          hint={curriculaMessage('conditionsHint')}
          name={`conditions/${stage.stageId}`}
          lines={stage.conditions}
          most={6}
          onWrite={(conditions) => set({ conditions }, `stage ${stage.stageId} conditions`)}
        />
      </div>
    </li>
  )
}

/** The whole pattern, or its first steps: fewer than all, for all of them is the whole. */
function formChoices(steps: number): readonly PartChoice[] {
  const first = Array.from({ length: Math.max(0, steps - 1) }, (_, index) => ({
    value: String(index + 1),
    label: curriculaMessage(index === 0 ? 'formFirstOne' : 'formFirst', { steps: index + 1 }),
    off: null,
  }))
  return [{ value: 'full', label: curriculaMessage('formFull'), off: null }, ...first]
}

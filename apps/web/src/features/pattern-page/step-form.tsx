import { actorOf, type PatternDocument, POINT_WORDS_MAX, type Run } from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { BlankChoice, CountedWords, type PartChoice } from '../writing/blank'
import { countWords } from '../writing/count-words'
import { ActionForm } from './action-form'
import type { OnChange } from './change-callback'
import { likelyRunner, runnerChoices } from './possible-choices'
import { SpotField } from './spot-field'
import { STEPS_MAX } from './step-limits'
import { type FoundStep, stepsOf } from './step-path'

type StepFormProps = {
  readonly document: PatternDocument
  readonly found: FoundStep
  readonly onChange: OnChange
}

/** Everything of one step that can be changed: the ball, the runs, what the coach calls, and where it stands. */
export function StepForm({ document, found, onChange }: StepFormProps) {
  const { step, before } = found
  return (
    <fieldset className="flex min-w-0 flex-col gap-2 pb-3">
      <legend className="sr-only">{patternsMessage('stepNumber', { number: before.length + 1 })}</legend>
      <ActionForm document={document} found={found} onChange={onChange} />
      <RunsForm document={document} found={found} onChange={onChange} />
      <CountedWords
        label={patternsMessage('point')}
        value={step.point}
        onWrite={(text) => onChange({ kind: 'point', stepId: step.stepId, text }, `point ${step.stepId}`)}
        maxLength={80}
        placeholder={patternsMessage('pointPlaceholder')}
        words={countWords(step.point)}
        most={POINT_WORDS_MAX}
        say={(words, most) => patternsMessage('wordCount', { words, most })}
        className="voice-club italic"
      />
      <StepPresses document={document} found={found} onChange={onChange} />
    </fieldset>
  )
}

function RunsForm({ document, found, onChange }: StepFormProps) {
  const { step } = found
  const next = likelyRunner(document, step)
  return (
    <div className="flex flex-col gap-1">
      {step.runs.map((run, index) => (
        <RunLine key={run.position} {...{ document, found, onChange, run, index }} />
      ))}
      <Button
        kind="quiet"
        className="self-start"
        offBecause={next === null ? patternsMessage('addRunOff') : null}
        onClick={() => onChange({ kind: 'add-run', stepId: step.stepId, position: next ?? '' })}
      >
        {patternsMessage('addRun')}
      </Button>
    </div>
  )
}

function RunLine({
  document,
  found,
  onChange,
  run,
  index,
}: StepFormProps & { readonly run: Run; readonly index: number }) {
  const { step } = found
  const actor = actorOf(step.action)
  const set = (next: Run) => onChange({ kind: 'run', stepId: step.stepId, index, run: next })
  return (
    <div className="flex flex-wrap items-baseline gap-x-2 border-t border-dotted border-ink-soft">
      <BlankChoice
        label={patternsMessage('runner')}
        value={run.position}
        choices={runnerChoices(document, step, index)}
        onChoose={(position) => set({ ...run, position })}
        strong
      />
      <BlankChoice
        label={patternsMessage('runStart')}
        value={run.start}
        choices={startChoices(actor)}
        onChoose={(start) => set({ ...run, start })}
      />
      <SpotField
        document={document}
        spot={run.to}
        what={patternsMessage('placeOfRun', { position: run.position })}
        ownKey={`run ${step.stepId} ${run.position}`}
        onChange={(to) => set({ ...run, to })}
      />
      <Button
        kind="quiet"
        aria-label={patternsMessage('removeRun', { position: run.position })}
        onClick={() => onChange({ kind: 'remove-run', stepId: step.stepId, index })}
      >
        {patternsMessage('removeShort')}
      </Button>
    </div>
  )
}

function startChoices(actor: string): readonly PartChoice<Run['start']>[] {
  return [
    { value: 'before-the-ball', label: patternsMessage('startBefore', { actor }), off: null },
    { value: 'with-the-ball', label: patternsMessage('startWith', { actor }), off: null },
    { value: 'after-the-ball', label: patternsMessage('startAfter'), off: null },
  ]
}

function StepPresses({ document, found, onChange }: StepFormProps) {
  const { step, list, index } = found
  const { length } = stepsOf(document, list)
  const { stepId } = step
  const full =
    length < STEPS_MAX[list.kind] ? null : patternsMessage(list.kind === 'trunk' ? 'addStepOff' : 'answerSteps')
  return (
    <div className="flex flex-wrap gap-x-4">
      <Button kind="quiet" offBecause={full} onClick={() => onChange({ kind: 'insert-step', list, at: index })}>
        {patternsMessage('insertBefore')}
      </Button>
      {full === null && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'duplicate-step', stepId })}>
          {patternsMessage('duplicate')}
        </Button>
      )}
      {index > 0 && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'move-step', stepId, by: -1 })}>
          {patternsMessage('moveUp')}
        </Button>
      )}
      {index < length - 1 && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'move-step', stepId, by: 1 })}>
          {patternsMessage('moveDown')}
        </Button>
      )}
      {length > 1 && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'remove-step', stepId })}>
          {patternsMessage('delete')}
        </Button>
      )}
    </div>
  )
}

import type { Answer, Look, PatternDocument } from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { BlankChoice } from '../writing/blank'
import type { OnChange } from './change-callback'
import { rejoinChoices, signChoices } from './possible-choices'
import { STEPS_MAX } from './step-limits'

type AnswerFormProps = {
  readonly document: PatternDocument
  readonly look: Look
  readonly at: number
  readonly letter: string
  readonly onChange: OnChange
}

/** The sign of an answer and where it leads; its steps are changed like any other. */
export function AnswerForm({ document, look, at, letter, onChange }: AnswerFormProps) {
  const answer = look.answers[at]
  if (answer === undefined) return null
  const isExit = at === look.answers.length - 1
  const set = (next: Partial<Pick<Answer, 'sign' | 'about' | 'rejoins'>>) =>
    onChange({
      kind: 'answer',
      lookId: look.lookId,
      answer: at,
      sign: answer.sign,
      about: answer.about,
      rejoins: answer.rejoins,
      ...next,
    })
  const list = { kind: 'answer', lookId: look.lookId, answer: at } as const
  const full = answer.steps.length < STEPS_MAX.answer ? null : patternsMessage('answerSteps')
  return (
    <div className="flex flex-wrap items-baseline gap-x-2">
      <span>{patternsMessage('answerIf')}</span>
      <BlankChoice
        label={patternsMessage('answerSign', { letter })}
        value={answer.sign}
        choices={signChoices(answer, isExit)}
        onChoose={(sign) => set({ sign })}
      />
      {answer.about !== null && (
        <BlankChoice
          label={patternsMessage('answerAbout', { letter })}
          value={answer.about}
          choices={document.positions.map(({ position }) => ({ value: position, label: position, off: null }))}
          onChoose={(about) => set({ about })}
        />
      )}
      <span>{patternsMessage('answerThen')}</span>
      <BlankChoice
        label={patternsMessage('answerOnward', { letter })}
        value={answer.rejoins}
        choices={rejoinChoices(document, look.lookId, at, isExit)}
        onChoose={(rejoins) => set({ rejoins })}
      />
      <Button
        kind="quiet"
        offBecause={full}
        onClick={() => onChange({ kind: 'insert-step', list, at: answer.steps.length })}
      >
        {patternsMessage('addAnswerStep', { letter })}
      </Button>
      {!isExit && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'remove-answer', lookId: look.lookId, answer: at })}>
          {patternsMessage('removeAnswer', { letter })}
        </Button>
      )}
    </div>
  )
}

type LookPressesProps = {
  readonly document: PatternDocument
  readonly stepId: string
  readonly number: number
  readonly onChange: OnChange
}

/** Adds or takes away what the player on the ball looks for before a step. */
export function LookPresses({ document, stepId, number, onChange }: LookPressesProps) {
  const look = document.looks.find((each) => each.stepId === stepId)
  if (look === undefined)
    return (
      <Button kind="quiet" onClick={() => onChange({ kind: 'add-look', stepId })}>
        {patternsMessage('addLook', { number })}
      </Button>
    )
  return (
    <div className="flex flex-wrap gap-x-4">
      {look.answers.length < 6 && (
        <Button kind="quiet" onClick={() => onChange({ kind: 'add-answer', lookId: look.lookId })}>
          {patternsMessage('addAnswer')}
        </Button>
      )}
      <Button kind="quiet" onClick={() => onChange({ kind: 'remove-look', lookId: look.lookId })}>
        {patternsMessage('removeLook')}
      </Button>
    </div>
  )
}

import {
  type ScriptAnswer,
  type ScriptLook,
  type ScriptStep,
  scriptLooks,
  scriptSentences,
} from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'
import { classNames } from '../../ui/class-names'
import { NotesMargin } from './notes-margin'
import type { PatternSheetProps } from './pattern-sheet'
import { StepPress } from './script-sentence'
import { findStep } from './step-path'

/** The script: one wire a step, which runs on to the notes of that step. */
export function ScriptSteps(props: PatternSheetProps) {
  const { reading, stepId } = props
  const { document } = reading
  const script = scriptSentences(document)
  const looks = scriptLooks(document)
  const here = stepId === null ? null : findStep(document, stepId)
  const trunkAt = here === null ? -1 : here.list.kind === 'trunk' ? here.index : here.before.length - here.index
  return (
    <ol aria-label={patternsMessage('script')} className="pattern-steps">
      {script.map((step, index) => (
        <ScriptLine
          key={step.stepId}
          {...props}
          step={step}
          look={looks.find((look) => look.stepId === step.stepId) ?? null}
          startsAt={reading.check?.timeline.steps[index]?.startsAt ?? null}
          state={index === trunkAt ? 'now' : index < trunkAt ? 'read' : 'next'}
        />
      ))}
    </ol>
  )
}

type ScriptLineProps = PatternSheetProps & {
  readonly step: ScriptStep
  readonly look: ScriptLook | null
  /** Seconds from the restart; null while nothing can be played. */
  readonly startsAt: number | null
  readonly state: 'read' | 'now' | 'next'
}

function ScriptLine(props: ScriptLineProps) {
  const { step, look, startsAt, state, stepId, reading, onRead, stepForm, lookPresses } = props
  const notes = reading.notes.filter((note) => note.stepId === step.stepId)
  const isRead = step.stepId === stepId
  return (
    <li className={classNames('pattern-step', state === 'now' && 'pattern-now', state === 'read' && 'pattern-read')}>
      <div className="pattern-said">
        <span className="pattern-time text-fine text-ink-soft" aria-hidden="true">
          {startsAt === null ? '' : startsAt.toFixed(1)}
        </span>
        <StepPress
          step={step}
          mark={String(step.number)}
          isRead={isRead}
          letters={notes.map(({ letter }) => letter)}
          onRead={() => onRead(isRead ? null : step.stepId)}
        />
      </div>
      <div className="pattern-margin">
        <NotesMargin notes={notes} onMend={props.onMend} />
      </div>
      {(isRead || look !== null) && (
        <div className="pattern-under">
          {isRead && stepForm?.(step.stepId)}
          {look !== null && <LookLines {...props} look={look} />}
          {isRead && lookPresses?.(step.stepId, step.number)}
        </div>
      )}
    </li>
  )
}

/** What the player on the ball looks for before this step, and the answers in the order they are tried. */
function LookLines(props: ScriptLineProps & { readonly look: ScriptLook }) {
  const { look, step } = props
  return (
    <div className="border-l-2 border-wire pl-3">
      <p className="voice-club">{look.sentence.text}</p>
      <ol aria-label={patternsMessage('lookBefore', { number: step.number })} className="flex flex-col gap-1">
        {look.answers.map((answer, at) => (
          <AnswerLines key={answer.letter} {...props} answer={answer} at={at} />
        ))}
      </ol>
    </div>
  )
}

type AnswerLinesProps = ScriptLineProps & {
  readonly look: ScriptLook
  readonly answer: ScriptAnswer
  readonly at: number
}

function AnswerLines(props: AnswerLinesProps) {
  const { look, answer, at, stepId, reading, onRead, stepForm, answerForm } = props
  const isOpen = answer.steps.some((each) => each.stepId === stepId) || look.stepId === stepId
  return (
    <li>
      <p className="voice-club">
        <span className="font-semibold">{answer.letter}</span> {answer.sign.text}
      </p>
      {answer.steps.map((each) => {
        const isRead = each.stepId === stepId
        const letters = reading.notes.filter((note) => note.stepId === each.stepId)
        return (
          <div key={each.stepId}>
            <StepPress
              step={each}
              mark=""
              isRead={isRead}
              letters={letters.map(({ letter }) => letter)}
              onRead={() => onRead(isRead ? look.stepId : each.stepId)}
            />
            <NotesMargin notes={letters} onMend={props.onMend} />
            {isRead && stepForm?.(each.stepId)}
          </div>
        )
      })}
      <p className="voice-club text-ink-soft">{answer.onward.text}</p>
      {isOpen && answerForm?.(look.lookId, at, answer.letter)}
    </li>
  )
}

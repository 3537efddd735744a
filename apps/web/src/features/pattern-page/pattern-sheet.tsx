import './pattern-sheet.css'
import type { Remedy } from '@espalier/domain/check'
import type { FormatChoices } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import type { ReactNode } from 'react'
import { AnswerLayers, AnswerSample } from '../../drawing/answer-layers'
import { type DrawnPattern, PatternDrawing, patternInWords } from '../../drawing/pattern-drawing'
import { sceneAnswers } from '../../drawing/scene-answers'
import { drawingMessage } from '../../messages/drawing'
import { patternsMessage } from '../../messages/patterns'
import type { CheckSetting } from './check-setting'
import { CheckedFor } from './checked-for'
import type { MarginNote } from './margin-notes'
import { NotesMargin } from './notes-margin'
import { type PatternReading, shownPattern } from './pattern-reading'
import { ScriptSteps } from './script-steps'

export type PatternSheetProps = {
  readonly reading: PatternReading
  readonly choices: FormatChoices
  /** The step being read, of the trunk or of an answer; null where all are drawn alike. */
  readonly stepId: string | null
  readonly onRead: (stepId: string | null) => void
  readonly opening?: ReactNode
  readonly tail?: ReactNode
  /** The form of one step, under its sentence while it is read. */
  readonly stepForm?: ((stepId: string) => ReactNode) | undefined
  readonly answerForm?: ((lookId: string, at: number, letter: string) => ReactNode) | undefined
  readonly lookPresses?: ((stepId: string, number: number) => ReactNode) | undefined
  readonly onMend?: ((remedy: Remedy) => void) | undefined
  readonly onSetting?: ((setting: CheckSetting) => void) | undefined
}

/** A pattern as a page: the script on the left, the pitch beside it, notes in the margin at the step they speak of. */
export function PatternSheet(props: PatternSheetProps) {
  const { reading, choices, stepId, opening, tail } = props
  const { document, notes } = reading
  const general = notes.filter((note) => note.stepId === null)
  return (
    <div className="pattern-sheet">
      {opening !== undefined && <div className="pattern-opening">{opening}</div>}
      <div className={props.stepForm === undefined ? 'pattern-board pattern-board-reading' : 'pattern-board'}>
        <Board document={document} choices={choices} stepId={stepId} notes={notes} />
      </div>
      {general.length > 0 && (
        <div className="pattern-general">
          <NotesMargin notes={general} onMend={props.onMend} />
        </div>
      )}
      <ScriptSteps {...props} />
      {tail !== undefined && <div className="pattern-tail">{tail}</div>}
      <div className="pattern-checked">
        <CheckedFor reading={reading} onSetting={props.onSetting} />
      </div>
      <PhoneWords document={document} />
    </div>
  )
}

type BoardProps = {
  readonly document: PatternDocument
  readonly choices: FormatChoices
  readonly stepId: string | null
  readonly notes: readonly MarginNote[]
}

/** The drawing for desk, phone and paper; only one of them is shown and read out. On paper all steps are drawn alike. */
function Board({ document, choices, stepId, notes }: BoardProps) {
  const shown = shownPattern(document, stepId)
  const space = nominalSpace(document.formatId)
  const letters = notes.flatMap(({ letter, stepId: at }) => (at === null ? [] : [{ letter, stepId: at }]))
  const answers = sceneAnswers(document, space, choices)
  const lookId = lookRead(document, stepId)
  const above = (drawn: DrawnPattern) => <AnswerLayers {...drawn} answers={answers} lookId={lookId} />
  const shared = {
    document: titled(shown.document),
    space,
    step: shown.step,
    choices,
    letters,
    above: answers.length === 0 ? undefined : above,
    aboveLegend: answers.length === 0 ? undefined : <AnswerSample words={patternsMessage('answerMark')} />,
  }
  return (
    <>
      <div className="max-desk:hidden print:hidden">
        <PatternDrawing {...shared} medium="desk" annotated />
      </div>
      <div className="desk:hidden print:hidden">
        {/* Its words stand under the script: this drawing stays in view and must not grow. */}
        <PatternDrawing {...shared} medium="phone" cropped inWords={false} />
      </div>
      <div className="hidden print:block">
        <PatternDrawing {...shared} document={titled(document)} step={undefined} medium="paper" />
      </div>
    </>
  )
}

/** The look whose answers are read: its step, or a step of one of them. */
function lookRead(document: PatternDocument, stepId: string | null): string | null {
  const look = document.looks.find(
    (each) =>
      each.stepId === stepId || each.answers.some((answer) => answer.steps.some((step) => step.stepId === stepId)),
  )
  return look?.lookId ?? null
}

/** On a phone, the text that stands for the drawing. */
function PhoneWords({ document }: { readonly document: PatternDocument }) {
  return (
    <details className="text-small desk:hidden print:hidden">
      <summary className="inline-flex min-h-target items-center text-ink-soft underline underline-offset-[0.2em]">
        {drawingMessage('inWords')}
      </summary>
      <ol className="flex max-w-text flex-col gap-1">
        {patternInWords(document).map((sentence, index) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: sentences may repeat and are never reordered
          <li key={index}>{sentence}</li>
        ))}
      </ol>
    </details>
  )
}

/** A drawing needs a name before the pattern has one. */
function titled(document: PatternDocument): PatternDocument {
  return document.title === '' ? { ...document, title: patternsMessage('newTitle') } : document
}

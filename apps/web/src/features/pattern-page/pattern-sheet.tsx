import './pattern-sheet.css'
import type { Remedy } from '@espalier/domain/check'
import type { FormatChoices } from '@espalier/domain/formats'
import { formatOf } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import { metresOf } from '@espalier/domain/quantities'
import type { ReactNode } from 'react'
import { PatternDrawing, patternInWords } from '../../drawing/pattern-drawing'
import { drawingMessage } from '../../messages/drawing'
import { patternsMessage } from '../../messages/patterns'
import { Origin } from '../../ui/origin/origin'
import { metresText } from '../writing/metres-blank'
import type { MarginNote } from './margin-notes'
import { originWord } from './margin-notes'
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
        <CheckedFor reading={reading} />
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
  const shared = { document: titled(shown.document), space, step: shown.step, choices, letters }
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

/** For whom and on what pitch the notes hold, and that silence means that all fits. */
function CheckedFor({ reading }: { readonly reading: PatternReading }) {
  const { document, check, notes } = reading
  if (check === null) return <p className="text-small text-ink-soft">{patternsMessage('checkWaits')}</p>
  const { lengthMm, widthMm } = nominalSpace(document.formatId)
  const sizes = { length: metresText(round(lengthMm)), width: metresText(round(widthMm)) }
  const values = { age: document.ageGroup, format: formatOf(document.formatId).name, ...sizes }
  return (
    <div className="text-small text-ink-soft">
      {notes.length === 0 && <p>{patternsMessage('noNotes', values)}</p>}
      {notes.length > 0 && <p>{patternsMessage('checkedFor', values)}</p>}
      <Origin word={originWord('habit')}>{patternsMessage('checkedOrigin', values)}</Origin>
    </div>
  )
}

/** To a tenth of a metre. */
function round(length: Parameters<typeof metresOf>[0]): number {
  return Math.round(metresOf(length) * 10) * 100
}

import type { ScriptPartKind, ScriptStep } from '@espalier/domain/pattern'
import { classNames } from '../../ui/class-names'

const NAMES: readonly ScriptPartKind[] = ['actor', 'receiver', 'runner']

/** The short sentences of a step in the club's voice, players set stronger. */
export function ScriptSentences({ step }: { readonly step: ScriptStep }) {
  return step.sentences.map((sentence, at) => (
    // biome-ignore lint/suspicious/noArrayIndexKey: sentences of one step have no other name and are drawn anew as one
    <span key={at}>
      {at > 0 && ' '}
      {sentence.parts
        .filter((part) => !part.detail)
        .map((part, index) =>
          NAMES.includes(part.kind) ? (
            // biome-ignore lint/suspicious/noArrayIndexKey: as above
            <span key={index} className="font-semibold">
              {part.text}
            </span>
          ) : (
            part.text
          ),
        )}
    </span>
  ))
}

type StepPressProps = {
  readonly step: ScriptStep
  /** Its number or letter as it stands before the sentence. */
  readonly mark: string
  readonly isRead: boolean
  readonly letters: readonly string[]
  readonly onRead: () => void
}

/** A sentence that is pressed to see its step on the drawing, and to change it where the page is for writing. */
export function StepPress({ step, mark, isRead, letters, onRead }: StepPressProps) {
  return (
    <button
      type="button"
      onClick={onRead}
      aria-pressed={isRead}
      data-step={step.stepId}
      className="flex min-h-target w-full gap-3 py-2 text-left hover:bg-tint aria-pressed:hover:bg-transparent"
    >
      <span
        className={classNames(
          'voice-club w-6 shrink-0 text-center text-lead leading-tight',
          isRead ? 'font-bold' : 'text-ink-soft',
        )}
      >
        {mark}
      </span>
      <span className="min-w-0 flex-1">
        <span className="voice-club block text-script">
          <ScriptSentences step={step} />
          {letters.map((letter) => (
            <sup key={letter} className="pl-px font-semibold italic leading-none">
              {letter}
            </sup>
          ))}
        </span>
        {step.point !== '' && <span className="voice-club block italic text-ink-soft">{step.point}</span>}
      </span>
    </button>
  )
}

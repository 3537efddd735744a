import { type PatternDocument, scriptSentences } from '@espalier/domain/pattern'
import { lineUpsMessage } from '../../messages/line-ups'
import { classNames } from '../../ui/class-names'
import { FieldSection } from './field-frame'

type PatternScriptProps = {
  readonly document: PatternDocument
  /** The step being read, from 0; null where all are. */
  readonly step: number | null
  readonly onStep: (step: number | null) => void
}

/** The pattern as sentences in the club's voice; tap one and the drawing shows that step, tap it again and it shows all. */
export function PatternScript({ document, step, onStep }: PatternScriptProps) {
  return (
    <FieldSection title={lineUpsMessage('script')}>
      <ol className="flex flex-col">
        {scriptSentences(document).map((sentence, index) => {
          const isRead = index === step
          return (
            <li key={sentence.stepId} className="border-b border-wire">
              <button
                type="button"
                aria-pressed={isRead}
                onClick={() => onStep(isRead ? null : index)}
                className={classNames('flex min-h-target w-full gap-3 py-2 text-left', isRead && 'bg-here')}
              >
                <span className="voice-club w-6 shrink-0 text-center text-lead leading-tight font-[650]">
                  {sentence.number}
                </span>
                <span>
                  <span className="voice-club block text-script leading-snug">{sentence.text}</span>
                  {sentence.point !== '' && (
                    <span className="block leading-snug">
                      <span className="text-ink-soft">{lineUpsMessage('sayNow')}</span>{' '}
                      <strong className="voice-club font-[650]">{sentence.point}</strong>
                    </span>
                  )}
                </span>
              </button>
            </li>
          )
        })}
      </ol>
    </FieldSection>
  )
}

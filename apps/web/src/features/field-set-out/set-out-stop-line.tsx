import type { SetOutSentence } from '@espalier/domain/session'
import type { Ref } from 'react'
import { setOutMessage } from '../../messages/set-out'
import { classNames } from '../../ui/class-names'

export type StopState = 'done' | 'here' | 'ahead'

type SetOutStopLineProps = {
  readonly sentence: SetOutSentence
  readonly state: StopState
  readonly lineRef?: Ref<HTMLLIElement>
}

const TAGS = {
  done: 'bg-ink text-sheet',
  here: 'bg-act text-on-act',
  ahead: 'bg-sheet text-ink',
} as const satisfies Record<StopState, string>

/** The bag has no number: the walk starts there. */
function Bag() {
  return (
    <svg viewBox="0 0 20 20" aria-hidden="true" className="size-5 fill-none stroke-current stroke-2">
      <path d="M3 7H17L18 18H2ZM6.5 7C6.5 1 13.5 1 13.5 7" />
    </svg>
  )
}

/** One stop in words: how to get there, what to put down, what it is for. Done is filled, here accented, ahead outlined. */
export function SetOutStopLine({ sentence, state, lineRef }: SetOutStopLineProps) {
  const isHere = state === 'here'
  return (
    <li
      ref={lineRef}
      aria-current={isHere ? 'step' : undefined}
      className={classNames('flex gap-4 border-b border-wire py-3', isHere && '-mx-4 bg-here px-4')}
    >
      <span
        className={classNames(
          'flex size-8 shrink-0 items-center justify-center rounded-cut border-2 border-ink font-bold',
          TAGS[state],
        )}
      >
        {sentence.number === 0 ? <Bag /> : sentence.number}
      </span>
      <div className={classNames('min-w-0', isHere ? 'text-script' : state === 'done' && 'text-ink-soft')}>
        {state !== 'ahead' && <span className="sr-only">{setOutMessage(state)}. </span>}
        <p className="leading-snug">
          {sentence.walk.map((word, index) =>
            word.kind === 'paces' ? (
              // biome-ignore lint/suspicious/noArrayIndexKey: the words of one sentence repeat and are never reordered
              <strong key={index}>{word.text}</strong>
            ) : (
              word.text
            ),
          )}
        </p>
        {sentence.number > 0 && (
          <p className="leading-snug">
            <strong>{sentence.item}</strong>
            {sentence.instead !== null && <span>, {sentence.instead}</span>}
            {sentence.purpose !== '' && <span className="text-ink-soft">, {sentence.purpose}</span>}
          </p>
        )}
      </div>
    </li>
  )
}

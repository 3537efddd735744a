import './writing.css'
import { useId } from 'react'
import { classNames } from '../../ui/class-names'

/** A choice of a blank; one that is off stays in the list and says why. */
export type PartChoice<Value extends string = string> = {
  readonly value: Value
  readonly label: string
  readonly off: string | null
  /** Choices of one group stand together under its name. */
  readonly group?: string
}

const BLANK_CLASSES = 'blank field-sizing-content min-h-target px-1'

type BlankChoiceProps<Value extends string> = {
  /** Read out; the sentence round the blank says it to whoever sees. */
  readonly label: string
  readonly value: Value
  readonly choices: readonly PartChoice<Value>[]
  readonly onChoose: (value: Value) => void
  readonly strong?: boolean
  readonly className?: string
}

/** A blank of a sentence that is filled by choosing: the browser's own list, so that it works by thumb and keyboard. */
export function BlankChoice<Value extends string>(props: BlankChoiceProps<Value>) {
  const { label, value, choices, onChoose, strong = false, className } = props
  return (
    <select
      aria-label={label}
      value={value}
      onChange={(event) => {
        const chosen = choices.find((choice) => choice.value === event.currentTarget.value)
        if (chosen !== undefined) onChoose(chosen.value)
      }}
      className={classNames(BLANK_CLASSES, strong && 'font-semibold', className)}
    >
      {grouped(choices).map(({ group, members }) =>
        group === undefined ? (
          members.map((choice) => <Choice key={choice.value} choice={choice} current={value} />)
        ) : (
          <optgroup key={group} label={group}>
            {members.map((choice) => (
              <Choice key={choice.value} choice={choice} current={value} />
            ))}
          </optgroup>
        ),
      )}
    </select>
  )
}

function Choice({ choice, current }: { readonly choice: PartChoice; readonly current: string }) {
  return (
    <option value={choice.value} disabled={choice.off !== null && choice.value !== current}>
      {choice.off === null ? choice.label : `${choice.label} (${choice.off})`}
    </option>
  )
}

type Group = { readonly group: string | undefined; readonly members: readonly PartChoice[] }

function grouped(choices: readonly PartChoice[]): readonly Group[] {
  const groups = [...new Set(choices.map((choice) => choice.group))]
  return groups.map((group) => ({ group, members: choices.filter((choice) => choice.group === group) }))
}

type BlankTextProps = {
  readonly label: string
  readonly value: string
  readonly onWrite: (text: string) => void
  readonly maxLength: number
  readonly placeholder?: string
  readonly describedBy?: string
  readonly wrong?: boolean
  readonly className?: string
  readonly id?: string
}

/** A blank that is filled by writing. */
export function BlankText(props: BlankTextProps) {
  return (
    <input
      id={props.id}
      type="text"
      aria-label={props.label}
      aria-describedby={props.describedBy}
      aria-invalid={props.wrong === true ? true : undefined}
      value={props.value}
      onChange={(event) => props.onWrite(event.currentTarget.value)}
      maxLength={props.maxLength}
      placeholder={props.placeholder}
      autoComplete="off"
      className={classNames('blank min-h-target w-full px-1', props.className)}
    />
  )
}

type CountedWordsProps = Omit<BlankTextProps, 'describedBy' | 'wrong'> & {
  readonly words: number
  readonly most: number
  readonly say: (words: number, most: number) => string
}

/** A short text with its words counted while it is written. */
export function CountedWords({ words, most, say, ...rest }: CountedWordsProps) {
  const countId = useId()
  return (
    <span className="flex flex-wrap items-baseline gap-x-3">
      <BlankText
        {...rest}
        describedBy={countId}
        wrong={words > most}
        className={classNames('flex-1', rest.className)}
      />
      <span id={countId} className={classNames('text-small', words > most ? 'font-semibold' : 'text-ink-soft')}>
        {say(words, most)}
      </span>
    </span>
  )
}

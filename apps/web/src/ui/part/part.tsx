import type { ComponentProps } from 'react'
import { classNames } from '../class-names'
import type { Choice } from '../select-field/select-field'

/** A part of a sentence that can be changed looks like a blank on a form: text on a dotted line. */
const PART_CLASSES =
  'dotted-line inline rounded-none bg-transparent px-px py-1 text-left text-inherit hover:decoration-solid'

type PartProps = Omit<ComponentProps<'button'>, 'style' | 'type'> & {
  /** What the part is, where its words do not say: "pace", before "80 cm". */
  readonly label?: string
}

/** A press inside a sentence: it opens what can be chosen. */
export function Part({ label, className, children, ...rest }: PartProps) {
  return (
    <button {...rest} type="button" className={classNames(PART_CLASSES, 'cursor-pointer', className)}>
      {label !== undefined && <span className="sr-only">{label} </span>}
      {children}
    </button>
  )
}

type PartSelectProps = Omit<ComponentProps<'select'>, 'style' | 'children'> & {
  readonly label: string
  readonly choices: readonly Choice[]
}

/** A choice inside a sentence, as wide as its words; the browser's own list makes it work everywhere. */
export function PartSelect({ label, choices, className, ...rest }: PartSelectProps) {
  return (
    <select
      {...rest}
      aria-label={label}
      className={classNames(
        'field-sizing-content inline appearance-none rounded-none border-b-2 border-dotted border-ink-faint bg-transparent px-px py-1 font-[inherit] text-inherit hover:border-solid hover:border-ink',
        className,
      )}
    >
      {choices.map((choice) => (
        <option key={choice.value} value={choice.value}>
          {choice.label}
        </option>
      ))}
    </select>
  )
}

type PartInputProps = Omit<ComponentProps<'input'>, 'style'> & { readonly label: string }

/** A word or number to write inside a sentence. */
export function PartInput({ label, className, ...rest }: PartInputProps) {
  return (
    <input
      {...rest}
      aria-label={label}
      className={classNames(
        'field-sizing-content inline min-w-8 rounded-none border-b-2 border-dotted border-ink-faint bg-transparent px-px py-1 font-[inherit] text-inherit hover:border-solid hover:border-ink',
        className,
      )}
    />
  )
}

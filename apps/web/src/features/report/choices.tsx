import type { ReactNode } from 'react'
import { classNames } from '../../ui/class-names'

type Option<Value extends string> = { readonly value: Value; readonly label: string; readonly remark?: string }

type ChoicesProps<Value extends string> = {
  readonly name: string
  readonly legend: string
  readonly hint?: ReactNode
  readonly options: readonly Option<Value>[]
  /** undefined while nothing is said. */
  readonly chosen: Value | undefined
  readonly onChoose: (value: Value) => void
  /** Short answers stand beside one another. */
  readonly isRow?: boolean
}

/** One question, answered with one tap. All answers look alike, so that none is nudged. */
export function Choices<Value extends string>(props: ChoicesProps<Value>) {
  const { name, legend, hint, options, chosen, onChoose, isRow = false } = props
  return (
    <fieldset id={`question-${name}`} className="flex scroll-mb-28 flex-col gap-1.5 border-t-2 border-ink pt-2">
      <legend className="float-left w-full text-script font-bold">{legend}</legend>
      {hint !== undefined && <p className="clear-both text-small text-ink-soft">{hint}</p>}
      <div className={classNames('clear-both grid gap-2', isRow && 'grid-cols-2')}>
        {options.map(({ value, label, remark }) => (
          <label
            key={value}
            className="flex min-h-target cursor-pointer items-center gap-3 rounded-cut border-[1.5px] border-ink px-3 py-1 leading-tight has-checked:border-[3px] has-checked:bg-here has-checked:font-bold has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-focus"
          >
            <input
              type="radio"
              name={name}
              value={value}
              checked={chosen === value}
              onChange={() => onChoose(value)}
              className="size-5 shrink-0 accent-ink"
            />
            <span className="min-w-0 flex-1">
              {label}
              {remark !== undefined && <span className="block text-small font-normal text-ink-soft">{remark}</span>}
            </span>
          </label>
        ))}
      </div>
    </fieldset>
  )
}

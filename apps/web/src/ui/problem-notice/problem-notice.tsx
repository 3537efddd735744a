import { fieldIdOfPointer } from '../field-set/field-id'

export type NoticeError = { readonly pointer: string; readonly detail: string }

type ProblemNoticeProps = {
  readonly title: string
  readonly detail?: string | undefined
  /** What is wrong where; each one leads to its control. */
  readonly errors?: readonly NoticeError[] | undefined
  /** Words for a control, by pointer; without them the detail stands alone. */
  readonly labels?: Readonly<Record<string, string>> | undefined
}

/** Why something was not done. It interrupts, because the person has just pressed and waits for it. */
export function ProblemNotice({ title, detail, errors = [], labels = {} }: ProblemNoticeProps) {
  return (
    <div role="alert" className="flex max-w-text flex-col gap-1 border-l-[7px] border-double border-ink py-1 pl-3">
      <p className="font-semibold">{title}</p>
      {detail !== undefined && <p>{detail}</p>}
      {errors.length > 0 && (
        <ul>
          {errors.map((error) => (
            <li key={`${error.pointer} ${error.detail}`}>
              <a href={`#${fieldIdOfPointer(error.pointer)}`} className="inline-flex min-h-target items-center">
                {labels[error.pointer] === undefined ? error.detail : `${labels[error.pointer]}: ${error.detail}`}
              </a>
            </li>
          ))}
        </ul>
      )}
    </div>
  )
}

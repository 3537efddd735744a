'use client'

import { useRouter } from 'next/navigation'
import { type FormEvent, type ReactNode, useState } from 'react'
import { newUuid } from '../api/identifiers'
import { useCommand } from '../api/use-command'
import { Button } from '../ui/button/button'
import { Status } from '../ui/status/status'
import { FailureNotice, isStale, wrongAt } from './failure-notice'

/** What a form reads from its fields: a body to send, or what is wrong, by field. */
export type FormReading =
  | {
      readonly ok: true
      readonly body: unknown
      readonly done: string
      /** What the change was made from, where the fields say which thing it is. */
      readonly fromVersion?: number
    }
  | { readonly ok: false; readonly wrong: Readonly<Record<string, string>> }

type CommandFormProps = {
  readonly method?: 'POST' | 'PUT'
  readonly path: string
  /** Reads the fields; `id` is made once for each thing to make, so that pressing again makes nothing twice. */
  readonly read: (form: FormData, id: string) => FormReading
  readonly press: string
  readonly pressing: string
  readonly kind?: 'next' | 'plain'
  readonly labels?: Readonly<Record<string, string>>
  /** Empties the fields after success, for forms that add one thing after another. */
  readonly startsAnew?: boolean
  readonly onDone?: () => void
  /** What to do where somebody else was faster. */
  readonly whenStale?: ReactNode
  readonly children: (wrongOf: (field: string) => string | undefined) => ReactNode
}

/** A form that is one command: read the fields, send, say what happened, show the page's new state. */
export function CommandForm(props: CommandFormProps) {
  const { method = 'POST', path, read, press, pressing, kind = 'plain', startsAnew = true, children } = props
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [id, setId] = useState(newUuid)
  const [wrong, setWrong] = useState<Readonly<Record<string, string>>>({})
  const [done, setDone] = useState<string | null>(null)

  async function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault()
    if (state === 'sending') return
    const element = event.currentTarget
    const reading = read(new FormData(element), id)
    setDone(null)
    setWrong(reading.ok ? {} : reading.wrong)
    if (!reading.ok) return
    const version = reading.fromVersion === undefined ? {} : { fromVersion: reading.fromVersion }
    const outcome = await send({ method, path, body: reading.body, ...version })
    // What somebody else made of it meanwhile shows beside the fields, which stay as they were filled in.
    if (isStale(outcome.ok ? null : outcome.failure)) router.refresh()
    if (!outcome.ok) return
    setDone(reading.done)
    setId(newUuid())
    if (startsAnew) element.reset()
    props.onDone?.()
    router.refresh()
  }

  return (
    <form onSubmit={submit} noValidate={false} className="flex flex-col gap-5">
      {children((field) => wrong[field] ?? wrongAt(failure, `/${field}`))}
      <FailureNotice failure={failure} {...(props.labels === undefined ? {} : { labels: props.labels })} />
      {isStale(failure) && props.whenStale}
      <div>
        <Button type="submit" kind={kind} aria-busy={state === 'sending'}>
          {state === 'sending' ? pressing : press}
        </Button>
      </div>
      <Status>{done}</Status>
    </form>
  )
}

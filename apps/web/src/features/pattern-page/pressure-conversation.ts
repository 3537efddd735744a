import { isLast, type PressureAnswer, type PressureQuestion } from './pressure-message'

/** What is used of a worker: tests speak to one of their own. */
export type PressureWorker = Pick<Worker, 'postMessage' | 'terminate' | 'onmessage' | 'onerror'>

export type PressureConversation = {
  readonly ask: (question: PressureQuestion) => void
  /** Nothing is asked any more: what is under way is dropped. */
  readonly drop: () => void
}

/** A typing hand changes more within this time: the work starts once it rests. */
export const REST_MILLISECONDS = 150

type Listeners = {
  readonly start: () => PressureWorker
  readonly onAnswer: (answer: PressureAnswer) => void
}

/**
 * Keeps one worker on the newest question. A computation cannot be told to stop from outside, so a worker that still works on
 * an older question is ended and replaced; one that is done is asked again. Where no worker starts, that is the answer.
 */
export function openConversation({ start, onAnswer }: Listeners): PressureConversation {
  let worker: PressureWorker | null = null
  let revision = 0
  let isBusy = false
  let timer: ReturnType<typeof setTimeout> | undefined

  const end = () => {
    worker?.terminate()
    worker = null
    isBusy = false
  }
  const hear = (answer: PressureAnswer) => {
    if (answer.revision !== revision) return
    if (isLast(answer)) isBusy = false
    onAnswer(answer)
  }
  const fail = (fault: string) => {
    end()
    onAnswer({ revision, part: 'fault', fault })
  }
  const started = () => {
    const fresh = start()
    fresh.onmessage = ({ data }: MessageEvent<PressureAnswer>) => hear(data)
    fresh.onerror = (event) => fail(event.message || 'worker')
    return fresh
  }
  const send = (question: PressureQuestion) => {
    try {
      worker ??= started()
      isBusy = true
      worker.postMessage(question)
    } catch (error) {
      fail(error instanceof Error ? error.message : String(error))
    }
  }
  return {
    ask: (question) => {
      const isFirst = revision === 0
      revision = question.revision
      clearTimeout(timer)
      if (isBusy) end()
      timer = setTimeout(() => send(question), isFirst ? 0 : REST_MILLISECONDS)
    },
    drop: () => {
      clearTimeout(timer)
      end()
    },
  }
}

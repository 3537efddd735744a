/**
 * A document being written, with every state before it: taking an edit back is never lost work. `Edit` is data, so that
 * a form, a press of a remedy and (later) a hand on the drawing all change the document the same way.
 */
export type History<Document> = {
  readonly document: Document
  readonly past: readonly Document[]
  readonly future: readonly Document[]
  /** What the last edit wrote into, so that typing one sentence is taken back as one. */
  readonly typingIn: string | null
}

export type HistoryEvent<Document, Edit> =
  | { readonly kind: 'edit'; readonly edit: Edit; readonly typingIn?: string }
  | { readonly kind: 'replace'; readonly document: Document }
  | { readonly kind: 'undo' }
  | { readonly kind: 'redo' }

/** States kept to go back to. */
const PAST_MAX = 200

export function startHistory<Document>(document: Document): History<Document> {
  return { document, past: [], future: [], typingIn: null }
}

/** Makes the reducer of one kind of document from its `change`. An edit that changes nothing leaves no trace. */
export function historyReducer<Document, Edit>(change: (document: Document, edit: Edit) => Document) {
  return function reduce(history: History<Document>, event: HistoryEvent<Document, Edit>): History<Document> {
    switch (event.kind) {
      case 'edit':
        return goOn(history, change(history.document, event.edit), event.typingIn ?? null)
      case 'replace':
        return goOn(history, event.document, null)
      case 'undo': {
        const before = history.past.at(-1)
        if (before === undefined) return history
        const future = [history.document, ...history.future]
        return { document: before, past: history.past.slice(0, -1), future, typingIn: null }
      }
      case 'redo': {
        const [after, ...future] = history.future
        if (after === undefined) return history
        return { document: after, past: [...history.past, history.document], future, typingIn: null }
      }
    }
  }
}

function goOn<Document>(history: History<Document>, document: Document, typingIn: string | null): History<Document> {
  if (document === history.document) return history
  const sameSentence = typingIn !== null && typingIn === history.typingIn
  const past = sameSentence ? history.past : [...history.past, history.document].slice(-PAST_MAX)
  return { document, past, future: [], typingIn }
}

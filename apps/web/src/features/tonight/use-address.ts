import { useCallback, useMemo, useSyncExternalStore } from 'react'
import { type FieldAddress, type FieldView, fieldHref, readFieldAddress } from './field-address'

// Views change in the address without asking the server: the page has everything, and may have no signal.
const watchers = new Set<() => void>()

function watch(onChange: () => void): () => void {
  watchers.add(onChange)
  window.addEventListener('popstate', onChange)
  return () => {
    watchers.delete(onChange)
    window.removeEventListener('popstate', onChange)
  }
}

let followed = false

/** Whether the page shown now was reached from inside, not by opening it. */
export function isFollowed(): boolean {
  return followed
}

export function goTo(href: string): void {
  followed = true
  window.history.pushState(null, '', href)
  window.scrollTo(0, 0)
  for (const onChange of watchers) onChange()
}

export type Address = {
  /** undefined while the static page has not read its address yet; null where it names no team. */
  readonly address: FieldAddress | null | undefined
  readonly hrefOf: (view: FieldView, dateId?: string | null) => string
}

export function useAddress(): Address {
  const search = useSyncExternalStore(
    watch,
    () => window.location.search,
    () => undefined,
  )
  const address = useMemo(() => (search === undefined ? undefined : readFieldAddress(search)), [search])
  const hrefOf = useCallback(
    (view: FieldView, dateId?: string | null) =>
      address === null || address === undefined
        ? ''
        : fieldHref({ ...address, view, dateId: dateId === undefined ? address.dateId : dateId }),
    [address],
  )
  return { address, hrefOf }
}

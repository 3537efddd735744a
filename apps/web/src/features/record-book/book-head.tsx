import type { LedgerHead } from '@espalier/contract/ledger'
import { ledgerMessage } from '../../messages/ledger'
import { instantWords } from '../../shell/dates'

/** Where a line is too short for a hash it breaks in the middle. */
const HALF = 32

/** The head that every check on the page is made against. */
export function BookHead({ head, zone }: { readonly head: LedgerHead; readonly zone: string }) {
  return (
    <dl className="grid max-w-text grid-cols-[auto_1fr] gap-x-4 gap-y-1">
      <dt className="text-ink-soft">{ledgerMessage('headTitle')}</dt>
      <dd>
        {ledgerMessage('lines', { count: head.size })},{' '}
        <strong>
          {head.sealed === null
            ? ledgerMessage('notSealed')
            : ledgerMessage('sealed', { at: instantWords(head.sealed.at, zone), size: head.sealed.size })}
        </strong>
      </dd>
      <dt className="text-ink-soft">{ledgerMessage('root')}</dt>
      <dd data-testid="root" className="text-small [overflow-wrap:anywhere]">
        {head.root.slice(0, HALF)}
        <wbr />
        {head.root.slice(HALF)}
      </dd>
    </dl>
  )
}

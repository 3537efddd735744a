import { useEffect } from 'react'
import { sheetMessage } from '../../messages/sheet'
import { Button } from '../../ui/button/button'
import { BackLink } from '../tonight/back-link'
import type { Tonight } from '../tonight/use-tonight'
import { Sheet } from './sheet'

/** The evening on one sheet of paper; on a phone the same content in a column, with a press that prints. */
export function SheetPage({ tonight }: { readonly tonight: Tonight }) {
  const { plan, facts } = tonight.planned
  const name = tonight.kit.team.name
  useEffect(() => {
    // Browsers name a printed file after the title.
    document.title = `${sheetMessage('title')}, ${name}`
  }, [name])
  return (
    <main className="mx-auto flex w-full max-w-[212mm] flex-col px-4 print:px-0">
      <div className="no-print flex flex-wrap items-center justify-between gap-4 py-2">
        <div>
          <BackLink hrefOf={tonight.hrefOf} />
          <p className="text-ink-soft">{sheetMessage('lead')}</p>
        </div>
        {plan !== null && (
          <Button kind="next" onClick={() => window.print()}>
            {sheetMessage('print')}
          </Button>
        )}
      </div>
      {plan === null || facts === null ? (
        <p className="py-4">{sheetMessage('noPlan')}</p>
      ) : (
        <Sheet tonight={tonight} plan={plan} facts={facts} />
      )}
    </main>
  )
}

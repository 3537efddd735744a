import { writingMessage } from '../../messages/writing'
import { Button } from '../../ui/button/button'

/** Says that unsaved words came back after a reload, and offers to let them go. */
export function KeptNotice({ isBack, onDiscard }: { readonly isBack: boolean; readonly onDiscard: () => void }) {
  return (
    <div
      role="status"
      className={isBack ? 'no-print flex flex-wrap items-baseline gap-x-4 border-l-2 border-ink pl-3' : 'hidden'}
    >
      {isBack && (
        <>
          <span>{writingMessage('broughtBack')}</span>
          <Button kind="quiet" onClick={onDiscard}>
            {writingMessage('discard')}
          </Button>
        </>
      )}
    </div>
  )
}

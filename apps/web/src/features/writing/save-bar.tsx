import type { ReactNode } from 'react'
import { writingMessage } from '../../messages/writing'
import { Button } from '../../ui/button/button'
import { Status } from '../../ui/status/status'

type SaveBarProps = {
  /** What stands saved: null where nothing was ever saved. */
  readonly version: number | null
  readonly isChanged: boolean
  /** False where the browser refuses to keep unsaved words. */
  readonly isKept: boolean
  readonly sending: boolean
  readonly offBecause: string | null
  readonly canUndo: boolean
  readonly canRedo: boolean
  readonly onSave: () => void
  readonly onUndo: () => void
  readonly onRedo: () => void
  /** Why the last save came to nothing: it stands where the press was made. */
  readonly notice?: ReactNode
  /** Counts and links that belong beside the press. */
  readonly children?: ReactNode
}

/** What is saved, what is not, and where the unsaved words are; with the press that saves. */
export function SaveBar(props: SaveBarProps) {
  return (
    <div className="no-print sticky bottom-0 z-2 -mx-4 flex flex-wrap items-center gap-x-6 gap-y-1 border-t-[1.5px] border-ink bg-paper px-4 py-2 desk:-mx-8 desk:px-8">
      <div className="basis-full empty:hidden">{props.notice}</div>
      <Button
        kind={props.offBecause === null ? 'next' : 'plain'}
        onClick={props.onSave}
        aria-busy={props.sending}
        offBecause={props.offBecause}
      >
        {writingMessage(props.sending ? 'saving' : 'save')}
      </Button>
      {props.canUndo && (
        <Button kind="quiet" onClick={props.onUndo}>
          {writingMessage('undo')}
        </Button>
      )}
      {props.canRedo && (
        <Button kind="quiet" onClick={props.onRedo}>
          {writingMessage('redo')}
        </Button>
      )}
      <Status>{stateWords(props)}</Status>
      {props.children}
    </div>
  )
}

/** In one sentence: what is saved and where the rest is. */
export function stateWords({
  version,
  isChanged,
  isKept,
}: Pick<SaveBarProps, 'version' | 'isChanged' | 'isKept'>): string {
  const kept = writingMessage(isKept ? 'keptHere' : 'keptNowhere')
  if (version === null) return isChanged ? `${writingMessage('unsavedNew')} ${kept}` : writingMessage('unsavedNew')
  return isChanged ? `${writingMessage('unsaved', { version })} ${kept}` : writingMessage('savedAs', { version })
}

import { curriculaMessage } from '../../messages/curricula'
import { Button } from '../../ui/button/button'

type MovePressesProps = {
  /** Of what: it is read out with each press. */
  readonly name: string
  readonly at: number
  readonly count: number
  readonly onMove: (by: -1 | 1) => void
  readonly onDelete: () => void
}

/** Earlier, later, delete: the same three wherever things stand in an order. */
export function MovePresses({ name, at, count, onMove, onDelete }: MovePressesProps) {
  const said = (word: 'earlier' | 'later' | 'delete') => `${curriculaMessage(word)}: ${name}`
  return (
    <span className="flex flex-wrap gap-x-4">
      {at > 0 && (
        <Button kind="quiet" aria-label={said('earlier')} onClick={() => onMove(-1)}>
          {curriculaMessage('earlier')}
        </Button>
      )}
      {at < count - 1 && (
        <Button kind="quiet" aria-label={said('later')} onClick={() => onMove(1)}>
          {curriculaMessage('later')}
        </Button>
      )}
      <Button kind="quiet" aria-label={said('delete')} onClick={onDelete}>
        {curriculaMessage('delete')}
      </Button>
    </span>
  )
}

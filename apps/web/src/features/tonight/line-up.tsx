import type { LineupBlock } from '@espalier/domain/lineups'
import { lineUpsMessage } from '../../messages/line-ups'
import { classNames } from '../../ui/class-names'
import type { NameOf } from './child-names'
import { FieldSection } from './field-frame'
import { inFormation } from './formation-order'

type LineUpProps = {
  readonly block: LineupBlock
  readonly before: LineupBlock | null
  /** Positions in the order the club writes them, from the goalkeeper. */
  readonly formation: readonly string[]
  readonly opponents: number
  readonly nameOf: NameOf
  readonly title: string
  readonly figure: string
}

/** Who plays where in one line-up; whoever stands elsewhere than before is underlined. */
export function LineUp({ block, before, formation, opponents, nameOf, title, figure }: LineUpProps) {
  const stoodAt = new Map(before?.places.map((place) => [place.childId, place.position]) ?? [])
  return (
    <FieldSection title={title} figure={figure}>
      <ul className="grid grid-cols-2 gap-x-4 gap-y-2">
        {inFormation(block.places, formation).map(({ position, childId }) => {
          const isNew = before !== null && stoodAt.get(childId) !== position
          return (
            <li key={position} className="flex items-center gap-3">
              <span
                className={classNames(
                  'inline-flex size-11 shrink-0 items-center justify-center rounded-full border-ink text-small font-bold',
                  isNew ? 'border-[3px]' : 'border-[1.5px]',
                )}
              >
                {position}
              </span>
              <span className={classNames('min-w-0 [overflow-wrap:anywhere]', isNew && 'font-bold underline')}>
                {nameOf(childId)}
                {isNew && <span className="sr-only">, {lineUpsMessage('newHere')}</span>}
              </span>
            </li>
          )
        })}
      </ul>
      <p className="leading-snug">{offWords(block, opponents, nameOf)}</p>
    </FieldSection>
  )
}

function offWords(block: LineupBlock, opponents: number, nameOf: NameOf): string {
  const names = block.off.map(nameOf).join(', ')
  if (block.off.length === 0) return lineUpsMessage('noOneOff')
  if (opponents === 0) return lineUpsMessage('offNames', { names })
  if (block.off.length <= opponents) return lineUpsMessage('defendNames', { names })
  return lineUpsMessage(opponents === 1 ? 'defendOne' : 'defendInTurn', { names, opponents })
}

import type { LineupPlan } from '@espalier/domain/lineups'
import type { PlannedActivity } from '@espalier/domain/session'
import { sheetMessage } from '../../messages/sheet'
import { blockRounds, roundsText } from '../tonight/block-rounds'
import type { NameOf } from '../tonight/child-names'
import { inFormation } from '../tonight/formation-order'

type SheetLineUpsProps = {
  readonly activity: PlannedActivity
  readonly lineups: LineupPlan
  readonly formation: readonly string[]
  readonly nameOf: NameOf
}

/** Line-ups as a table, each with an empty wire to tally on by pen. */
export function SheetLineUps({ activity, lineups, formation, nameOf }: SheetLineUpsProps) {
  const [first] = lineups.blocks
  if (first === undefined) return null
  const rounds = blockRounds(activity)
  return (
    <section className="sheet-line-ups">
      <h2>
        {sheetMessage('whoPlaysWhere')}{' '}
        <small>
          {lineups.fairnessProven && `${sheetMessage('fair')} `}
          {sheetMessage('tallyHint')}
        </small>
      </h2>
      <table>
        <thead>
          <tr>
            <th scope="col">{sheetMessage('rounds')}</th>
            {inFormation(first.places, formation).map((place) => (
              <th scope="col" key={place.position}>
                {place.position}
              </th>
            ))}
            <th scope="col">{sheetMessage(activity.opponents > 0 ? 'defendsHead' : 'offHead')}</th>
            <th scope="col">{sheetMessage('tally')}</th>
          </tr>
        </thead>
        <tbody>
          {lineups.blocks.map((block, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a line-up has no name but its place in the row
            <tr key={index}>
              <th scope="row">
                {roundsText(rounds[index] ?? [])} {sheetMessage(block.side)}
              </th>
              {inFormation(block.places, formation).map((place) => (
                <td key={place.position}>{nameOf(place.childId)}</td>
              ))}
              <td>{block.off.map(nameOf).join(', ')}</td>
              <td className="sheet-tally">
                <span />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  )
}

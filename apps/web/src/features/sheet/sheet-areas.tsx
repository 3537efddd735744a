import type { PlannedActivity } from '@espalier/domain/session'
import { AreasDrawing } from '../../drawing/areas-drawing'
import { Legend } from '../../drawing/legend'
import { sheetMessage } from '../../messages/sheet'
import { metresText, unbroken } from '../tonight/metres-text'
import type { SheetParts } from './sheet'

/** Where each activity is played, with its measures; the pattern has its own drawing. */
export function SheetAreas({ tonight, plan, facts }: SheetParts) {
  const drawn = plan.activities.filter((activity) => activity.kind !== 'pattern' && activity.areas.length > 0)
  if (drawn.length === 0) return null
  return (
    <section>
      <ul className="sheet-areas">
        {drawn.map((activity) => (
          <li key={activity.activityId}>
            <AreasDrawing
              title={activity.title}
              space={facts.space}
              areas={activity.areas}
              medium="paper"
              choices={tonight.kit.adopted?.content.settings}
              legend={false}
            />
            <p>
              <strong>{activity.title}</strong> {sizesWords(activity)}
            </p>
          </li>
        ))}
        <li>
          <Legend items={['area', 'cone']} />
        </li>
      </ul>
    </section>
  )
}

function sizesWords(activity: PlannedActivity): string {
  return [...new Set(activity.areas.map(sizeWords))].join(', ')
}

/** Width by length as one word of a line. */
export function sizeWords({ widthMm, lengthMm }: { readonly widthMm: number; readonly lengthMm: number }): string {
  return unbroken(sheetMessage('areaSize', { width: metresText(widthMm), length: metresText(lengthMm) }))
}

import { setOutSentences } from '@espalier/domain/session'
import { SetOutDrawing } from '../../drawing/set-out-drawing'
import { sheetMessage } from '../../messages/sheet'
import type { SheetParts } from './sheet'

/** The walk: the drawing and its sentences, in columns, ending in the check. */
export function SheetSetOut({ tonight, plan, facts }: SheetParts) {
  if (plan.setOut.length <= 1) return null
  const checks = plan.setOutChecks.map((check) =>
    sheetMessage('checkPart', { from: check.fromNumber, to: check.toNumber, paces: check.paces }),
  )
  return (
    <section className="sheet-set-out">
      <h2>
        {sheetMessage('setOut')}{' '}
        <small>{sheetMessage('setOutLead', { paces: plan.setOutPaces, centimetres: plan.paceMm / 10 })}</small>
      </h2>
      <div className="sheet-walk">
        <div className="sheet-walk-drawing">
          <SetOutDrawing
            space={facts.space}
            stops={plan.setOut}
            medium="paper"
            choices={tonight.kit.adopted?.content.settings}
          />
        </div>
        <ol>
          {setOutSentences(plan.setOut).map((sentence) => (
            <li key={sentence.number}>
              {sentence.number > 0 && <b>{sentence.number}</b>} {sentence.walkText}{' '}
              {sentence.number > 0 && (
                <strong>
                  {sentence.item}
                  {sentence.instead === null ? '' : ` (${sentence.instead})`}
                </strong>
              )}
              {sentence.purpose === '' ? '' : `, ${sentence.purpose}`}
            </li>
          ))}
          {checks.length > 0 && (
            <li>
              <strong>{sheetMessage('check', { checks: checks.join('; ') })}</strong>
            </li>
          )}
        </ol>
      </div>
    </section>
  )
}

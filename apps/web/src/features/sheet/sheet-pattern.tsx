import { scriptSentences } from '@espalier/domain/pattern'
import type { PlannedActivity } from '@espalier/domain/session'
import { PatternDrawing } from '../../drawing/pattern-drawing'
import { lineUpsMessage } from '../../messages/line-ups'
import { sheetMessage } from '../../messages/sheet'
import { stagePattern } from '../tonight/stage-pattern'
import type { SheetParts } from './sheet'

/** The pattern with its script and points, as written for one side. */
export function SheetPattern({ tonight, facts, activity }: SheetParts & { readonly activity: PlannedActivity }) {
  const trained = stagePattern(tonight.kit, activity.stageId)
  if (trained === null) return null
  const { document, stage } = trained
  const { mistakes, goLong, question } = document.teaching
  return (
    <section className="sheet-pattern">
      <h2>
        <span className="voice-club">{activity.title}</span>{' '}
        <small>{sheetMessage('patternMinutes', { minutes: activity.minutes, detail: activity.detail })}</small>
      </h2>
      <div className="sheet-pair">
        <PatternDrawing
          document={document}
          space={facts.space}
          medium="paper"
          choices={tonight.kit.adopted?.content.settings}
          inWords={false}
        />
        <div className="sheet-script voice-club">
          <p className="font-tool">{sheetMessage('mirrored', { side: sheetMessage(document.writtenFor) })}</p>
          <ol>
            {scriptSentences(document).map((step) => (
              <li key={step.stepId}>
                <b>{step.number}</b> {step.text}
                {step.point !== '' && <strong> {step.point}.</strong>}
              </li>
            ))}
          </ol>
          {stage.conditions.length > 0 && <p>{stage.conditions.join('. ')}.</p>}
          {mistakes.map(({ seen, change }) => (
            <p key={seen}>
              {seen} → {change}
            </p>
          ))}
          {question !== '' && (
            <p>
              <b>{lineUpsMessage('question')}</b> {question}
            </p>
          )}
          {goLong !== '' && (
            <p>
              <b>{lineUpsMessage('goLong')}</b> {goLong}
            </p>
          )}
        </div>
      </div>
    </section>
  )
}

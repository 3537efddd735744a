import { CHANGE_CHIPS } from '@espalier/contract/records'
import { reportMessage } from '../../messages/report'
import { CheckLine } from '../../ui/check-line/check-line'
import { NumberField } from '../../ui/number-field/number-field'
import { numberFromText } from '../../ui/number-field/number-text'
import type { ReportAnswers } from './report-answers'

type ReportDifferencesProps = {
  readonly answers: ReportAnswers
  readonly hasPattern: boolean
  readonly change: (changed: Partial<ReportAnswers>) => void
}

const MOST = { turnout: 60, guests: 60, minutes: 600, stageMinutes: 600 } as const
type Counted = keyof typeof MOST

/** Where the evening differed from its plan: chips and the numbers that are filled in already. */
export function ReportDifferences({ answers, hasPattern, change }: ReportDifferencesProps) {
  const counted = (name: Counted) => ({
    name: `report/${name}`,
    defaultValue: String(answers[name]),
    onChange: (event: { readonly target: { readonly value: string } }) => {
      const value = numberFromText(event.target.value)
      // What is no number changes nothing: the last one stands, and the line above says which.
      if (value !== null && Number.isInteger(value) && value >= 0 && value <= MOST[name]) change({ [name]: value })
    },
  })
  return (
    <details className="border-t-2 border-ink">
      <summary className="flex min-h-target cursor-pointer items-center font-semibold">
        <span className="dotted-line">{reportMessage('different')}</span>
      </summary>
      <div className="flex flex-col gap-4">
        <fieldset>
          <legend className="font-semibold">{reportMessage('chips')}</legend>
          {CHANGE_CHIPS.map((chip) => (
            <CheckLine
              key={chip}
              name={`chip/${chip}`}
              label={reportMessage(chip)}
              checked={answers.chips.includes(chip)}
              onChange={(event) =>
                change({
                  chips: event.target.checked
                    ? [...answers.chips, chip]
                    : answers.chips.filter((other) => other !== chip),
                })
              }
            />
          ))}
        </fieldset>
        <NumberField {...counted('turnout')} label={reportMessage('turnout')} unit={reportMessage('children')} />
        <NumberField {...counted('guests')} label={reportMessage('guests')} unit={reportMessage('children')} />
        <NumberField {...counted('minutes')} label={reportMessage('minutesAll')} unit={reportMessage('minutes')} />
        {hasPattern && (
          <NumberField
            {...counted('stageMinutes')}
            label={reportMessage('minutesStage')}
            unit={reportMessage('minutes')}
          />
        )}
        <p className="text-small text-ink-soft">{reportMessage('numbersWrong')}</p>
      </div>
    </details>
  )
}

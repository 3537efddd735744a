import { GOT_OUT } from '@espalier/contract/records'
import type { Kit } from '@espalier/domain/session'
import { reportMessage } from '../../messages/report'
import { Choices } from './choices'
import { type HowFar, questionsOf, type ReportAnswers, type ReportedPattern, rungsAround } from './report-answers'

type ReportQuestionsProps = {
  readonly kit: Kit
  readonly memberId: string | null
  readonly pattern: ReportedPattern | null
  readonly answers: ReportAnswers
  readonly change: (changed: Partial<ReportAnswers>) => void
}

const NOBODY = 'nobody'

/** The three questions, one tap each. */
export function ReportQuestions({ kit, memberId, pattern, answers, change }: ReportQuestionsProps) {
  const questions = questionsOf(pattern, answers)
  const pressure = pattern?.pressure ?? null
  return (
    <>
      {pattern !== null && pressure !== null ? (
        <Choices<HowFar>
          name="how-far"
          legend={reportMessage('howFar')}
          hint={reportMessage('howFarHint', { stage: pattern.title })}
          options={[
            ...rungsAround(pressure).map((rung) => ({
              value: rung,
              label: reportMessage(rung),
              ...(rung === pressure ? { remark: reportMessage('planned') } : {}),
            })),
            { value: 'not-reached', label: reportMessage('not-reached') },
          ]}
          chosen={answers.howFar}
          onChoose={(howFar) => change({ howFar })}
          isRow
        />
      ) : (
        <p className="text-ink-soft">{reportMessage('games')}</p>
      )}
      {questions.includes('got-out') && (
        <Choices
          name="got-out"
          legend={reportMessage('gotOut')}
          hint={reportMessage('gotOutHint')}
          options={GOT_OUT.map((value) => ({ value, label: reportMessage(`got-${value}`) }))}
          chosen={answers.gotOut}
          onChoose={(gotOut) => change({ gotOut })}
          isRow
        />
      )}
      <Choices
        name="second-adult"
        legend={reportMessage('secondAdult')}
        options={[
          ...kit.adults
            .filter((adult) => adult.memberId !== memberId)
            .map((adult) => ({ value: adult.memberId, label: adult.displayName })),
          { value: NOBODY, label: reportMessage('nobody') },
        ]}
        chosen={answers.secondAdult === null ? NOBODY : answers.secondAdult}
        onChoose={(value) => change({ secondAdult: value === NOBODY ? null : value })}
        isRow
      />
    </>
  )
}

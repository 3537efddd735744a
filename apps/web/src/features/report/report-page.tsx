import type { Operation } from '@espalier/contract/records'
import { type ReactNode, useEffect, useState } from 'react'
import { newUuid } from '../../api/identifiers'
import { reportMessage } from '../../messages/report'
import { listWaiting } from '../../offline/outbox'
import { dayWords } from '../../shell/dates'
import { Button, pressClasses } from '../../ui/button/button'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { BackLink } from '../tonight/back-link'
import { turnoutOf } from '../tonight/evening'
import { patternActivity } from '../tonight/evening-parts'
import { FieldFrame } from '../tonight/field-frame'
import { Standing } from '../tonight/standing'
import type { Tonight } from '../tonight/use-tonight'
import { ViewLink } from '../tonight/view-link'
import { CorrectPress } from './correct-press'
import { answersThen, type Corrected } from './corrected-report'
import { isAnswered, questionsOf, type ReportAnswers, type ReportQuestion, reportBodyOf } from './report-answers'
import { ReportDifferences } from './report-differences'
import { ReportQuestions } from './report-questions'

/** The report in three taps: how far, how often it got out, who was there too. Everything else is filled in. */
export function ReportPage({ tonight }: { readonly tonight: Tonight }) {
  const { kit, chosen, evening, planned, hrefOf } = tonight
  const day = dayWords(chosen.date.localDate)
  const frame = {
    club: kit.club.name,
    team: kit.team.name,
    standing: <Standing kitState={tonight.kitState} outbox={tonight.outbox} isKept={tonight.isKept} />,
    back: <BackLink hrefOf={hrefOf} />,
  }
  const [corrected, setCorrected] = useState<Corrected | null>(null)
  const [correctionId, setCorrectionId] = useState<string | null>(null)
  const correct = <CorrectPress tonight={tonight} onFound={setCorrected} />
  if (corrected !== null) {
    const onSent = (reportId: string) => {
      setCorrectionId(reportId)
      setCorrected(null)
    }
    return <ReportForm key={corrected.record.recordId} {...{ tonight, frame, corrected, onSent }} />
  }
  if (evening.reportId !== null) {
    const isCorrection = evening.reportId === correctionId
    return <AfterSending {...{ tonight, frame, correct, isCorrection }} reportId={evening.reportId} />
  }
  // Without a measured space there is never a plan, but there was an evening.
  if (planned.plan === null && tonight.facts !== null)
    return (
      <FieldFrame {...frame} title={reportMessage('title')} lead={day}>
        <EmptyState>{reportMessage('noPlan')}</EmptyState>
      </FieldFrame>
    )
  return <ReportForm key={chosen.date.dateId} {...{ tonight, frame, correct }} corrected={null} />
}

type Frame = Pick<Parameters<typeof FieldFrame>[0], 'club' | 'team' | 'standing' | 'back'>

/** What the plan already knows of the report. */
function firstAnswers({ kit, evening, planned, chosen }: Tonight): ReportAnswers {
  const turnout = turnoutOf(evening, kit)
  const pattern = planned.plan === null ? null : patternActivity(planned.plan)
  return {
    howFar: undefined,
    gotOut: undefined,
    secondAdult: undefined,
    chips: [],
    turnout: turnout.here.length,
    guests: turnout.guests.length,
    minutes: chosen.date.minutes,
    stageMinutes: pattern?.minutes ?? 0,
  }
}

type ReportFormProps = {
  readonly tonight: Tonight
  readonly frame: Frame
  readonly corrected: Corrected | null
  /** A way to correct what stands already, where this is no correction. */
  readonly correct?: ReactNode
  readonly onSent?: (reportId: string) => void
}

function ReportForm({ tonight, frame, corrected, correct, onSent }: ReportFormProps) {
  const { kit, chosen, planned } = tonight
  const [answers, setAnswers] = useState(() =>
    corrected === null ? firstAnswers(tonight) : answersThen(corrected, kit),
  )
  const { state, send } = useSendReport(tonight, corrected, onSent)
  const own = planned.plan === null ? null : patternActivity(planned.plan)
  const pattern = corrected === null ? own : corrected.pattern
  const children = answers.turnout + answers.guests
  const open = questionsOf(pattern, answers).find((question) => !isAnswered(question, answers))
  useShownQuestion(open)
  const change = (changed: Partial<ReportAnswers>) => setAnswers((before) => ({ ...before, ...changed }))
  return (
    <FieldFrame
      {...frame}
      title={reportMessage(corrected === null ? 'title' : 'correctTitle')}
      lead={reportMessage('lead', {
        day: dayWords(chosen.date.localDate),
        children: children === 1 ? reportMessage('childrenOne') : reportMessage('childrenMany', { count: children }),
        minutes: answers.minutes,
      })}
      presses={
        <Button
          kind="next"
          className="flex-1"
          offBecause={
            state === 'sending' ? reportMessage('sending') : open === undefined ? null : reportMessage(`open-${open}`)
          }
          onClick={() => void send(answers)}
        >
          {reportMessage(corrected === null ? 'send' : 'sendCorrection')}
        </Button>
      }
    >
      <ReportNotices {...{ corrected, correct, state }} isReported={chosen.date.reported} />
      <ReportQuestions kit={kit} memberId={tonight.memberId} pattern={pattern} answers={answers} change={change} />
      <ReportDifferences answers={answers} hasPattern={pattern !== null} change={change} />
    </FieldFrame>
  )
}

type ReportNoticesProps = Pick<ReportFormProps, 'corrected' | 'correct'> & {
  readonly isReported: boolean
  readonly state: SendState
}

/** What stands already of this evening, and whether what was sent could be kept. */
function ReportNotices({ corrected, correct, isReported, state }: ReportNoticesProps) {
  return (
    <>
      {corrected !== null && (
        <p className="bg-here px-2 py-1">{reportMessage('correctLead', { author: corrected.record.author })}</p>
      )}
      {corrected === null && isReported && (
        <div className="flex flex-col gap-2">
          <p className="bg-here px-2 py-1">{reportMessage('already')}</p>
          {correct}
        </div>
      )}
      {state === 'not-kept' && (
        <p role="alert" className="border-l-[7px] border-double border-ink pl-3 font-semibold">
          {reportMessage('notKept')}
        </p>
      )}
    </>
  )
}

/** After an answer the next open question comes into sight; what is in sight already does not move. */
function useShownQuestion(open: ReportQuestion | undefined): void {
  useEffect(() => {
    if (open !== undefined) document.getElementById(`question-${open}`)?.scrollIntoView({ block: 'nearest' })
  }, [open])
}

type SendState = 'open' | 'sending' | 'not-kept'

/** The plan goes first where it has not gone yet, then the report: one after the other, as they happened. */
function useSendReport(tonight: Tonight, corrected: Corrected | null, onSent?: (reportId: string) => void) {
  const { kit, chosen, planned, change, outbox } = tonight
  const [state, setState] = useState<SendState>('open')
  async function send(answers: ReportAnswers) {
    if (state === 'sending') return
    setState('sending')
    const own = planned.plan === null ? null : patternActivity(planned.plan)
    const of = {
      teamId: kit.team.teamId,
      dateId: chosen.date.dateId,
      planId: await planOf(tonight, corrected),
      pattern: corrected === null ? own : corrected.pattern,
      corrects: corrected?.record ?? null,
    }
    const body = reportBodyOf(of, answers)
    if (body === null) {
      setState('open')
      return
    }
    const at = new Date().toISOString()
    const report: Operation = { op: 'report-session', v: 1, id: newUuid(), at, zone: kit.club.zone, body }
    const isKept = await outbox.write(kit.team.teamId, [report])
    if (isKept) change({ kind: 'reported', reportId: report.id })
    setState(isKept ? 'open' : 'not-kept')
    if (isKept) onSent?.(report.id)
  }
  return { state, send }
}

/** The plan a report leans on. A correction makes none anew, nor does an evening that was not planned here before it was over. */
async function planOf(
  { kit, evening, chosen, keepPlan }: Tonight,
  corrected: Corrected | null,
): Promise<string | null> {
  const makesNone = corrected !== null || chosen.when === 'past'
  const kept = evening.kept?.planId ?? (makesNone ? null : await keepPlan())
  return (await isRefused(kit.club.clubId, kept)) ? null : kept
}

/** A report does not lean on a plan that the club did not take. */
async function isRefused(clubId: string, planId: string | null): Promise<boolean> {
  const waiting = await listWaiting(clubId)
  return waiting.some((each) => each.operation.id === planId && each.refusal !== null)
}

type AfterSendingProps = {
  readonly tonight: Tonight
  readonly reportId: string
  readonly frame: Frame
  readonly correct: ReactNode
  readonly isCorrection: boolean
}

/** "Sent" stands only where the club has answered that it has it. */
function AfterSending({ tonight, reportId, frame, correct, isCorrection }: AfterSendingProps) {
  const { chosen, outbox, hrefOf } = tonight
  const own = outbox.waiting?.find((each) => each.operation.id === reportId)
  const isSent = outbox.waiting !== null && own === undefined
  const sent = isCorrection ? 'corrected' : 'sent'
  const title = isSent ? (`${sent}Title` as const) : own?.refusal != null ? 'title' : 'keptTitle'
  const lead = isSent ? (`${sent}Lead` as const) : own?.refusal != null ? 'refusedLead' : 'keptLead'
  return (
    <FieldFrame
      {...frame}
      title={reportMessage(title)}
      presses={
        isSent || own?.refusal != null ? (
          <ViewLink href={hrefOf('tonight')} className={pressClasses('next', 'flex-1')}>
            {reportMessage('goTonight')}
          </ViewLink>
        ) : (
          <Button
            kind="next"
            className="flex-1"
            offBecause={outbox.isSending ? reportMessage('sending') : null}
            onClick={() => void outbox.send()}
          >
            {reportMessage('sendAgain')}
          </Button>
        )
      }
    >
      <p role="status" className="text-script">
        {reportMessage(lead, { day: dayWords(chosen.date.localDate) })}
      </p>
      {isSent && correct}
    </FieldFrame>
  )
}

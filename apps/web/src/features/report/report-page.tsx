import type { Operation } from '@espalier/contract/records'
import { useEffect, useState } from 'react'
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
  if (evening.reportId !== null) return <AfterSending tonight={tonight} reportId={evening.reportId} frame={frame} />
  // Without a measured space there is never a plan, but there was an evening.
  if (planned.plan === null && tonight.facts !== null)
    return (
      <FieldFrame {...frame} title={reportMessage('title')} lead={day}>
        <EmptyState>{reportMessage('noPlan')}</EmptyState>
      </FieldFrame>
    )
  return <ReportForm key={chosen.date.dateId} tonight={tonight} frame={frame} />
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

function ReportForm({ tonight, frame }: { readonly tonight: Tonight; readonly frame: Frame }) {
  const { kit, chosen, planned } = tonight
  const [answers, setAnswers] = useState(() => firstAnswers(tonight))
  const { state, send } = useSendReport(tonight)
  const pattern = planned.plan === null ? null : patternActivity(planned.plan)
  const children = answers.turnout + answers.guests
  const open = questionsOf(pattern, answers).find((question) => !isAnswered(question, answers))
  useShownQuestion(open)
  const change = (changed: Partial<ReportAnswers>) => setAnswers((before) => ({ ...before, ...changed }))
  return (
    <FieldFrame
      {...frame}
      title={reportMessage('title')}
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
          {reportMessage('send')}
        </Button>
      }
    >
      {chosen.date.reported && <p className="bg-here px-2 py-1">{reportMessage('already')}</p>}
      {state === 'not-kept' && (
        <p role="alert" className="border-l-[7px] border-double border-ink pl-3 font-semibold">
          {reportMessage('notKept')}
        </p>
      )}
      <ReportQuestions kit={kit} memberId={tonight.memberId} pattern={pattern} answers={answers} change={change} />
      <ReportDifferences answers={answers} hasPattern={pattern !== null} change={change} />
    </FieldFrame>
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
function useSendReport({ kit, evening, chosen, planned, change, keepPlan, outbox }: Tonight) {
  const [state, setState] = useState<SendState>('open')
  async function send(answers: ReportAnswers) {
    if (state === 'sending') return
    setState('sending')
    // An evening that was not planned on this phone before it was over has no plan to keep now.
    const kept = evening.kept?.planId ?? (chosen.when === 'past' ? null : await keepPlan())
    const planId = (await isRefused(kit.club.clubId, kept)) ? null : kept
    const of = {
      teamId: kit.team.teamId,
      dateId: chosen.date.dateId,
      planId,
      pattern: planned.plan === null ? null : patternActivity(planned.plan),
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
  }
  return { state, send }
}

/** A report does not lean on a plan that the club did not take. */
async function isRefused(clubId: string, planId: string | null): Promise<boolean> {
  const waiting = await listWaiting(clubId)
  return waiting.some((each) => each.operation.id === planId && each.refusal !== null)
}

type AfterSendingProps = { readonly tonight: Tonight; readonly reportId: string; readonly frame: Frame }

/** "Sent" stands only where the club has answered that it has it. */
function AfterSending({ tonight, reportId, frame }: AfterSendingProps) {
  const { chosen, outbox, hrefOf } = tonight
  const own = outbox.waiting?.find((each) => each.operation.id === reportId)
  const isSent = outbox.waiting !== null && own === undefined
  const title = isSent ? 'sentTitle' : own?.refusal != null ? 'title' : 'keptTitle'
  const lead = isSent ? 'sentLead' : own?.refusal != null ? 'refusedLead' : 'keptLead'
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
    </FieldFrame>
  )
}

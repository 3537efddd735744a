import { tonightMessage } from '../../messages/tonight'
import { dayWords } from '../../shell/dates'
import { pressClasses } from '../../ui/button/button'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { Bag } from './bag'
import { Cautions } from './cautions'
import { endOf, findUnreported } from './choose-date'
import { Circumstances } from './circumstances'
import { EveningLine } from './evening-line'
import { patternActivity } from './evening-parts'
import { FieldFrame, FieldSection } from './field-frame'
import { nextPress } from './next-press'
import { RefusedList } from './refused-list'
import { SitsOutAndGuests } from './sits-out'
import { Standing } from './standing'
import type { Tonight } from './use-tonight'
import { ViewLink } from './view-link'
import { WhoCame } from './who-came'

/** Tonight on one page, in the order a coach asks: when and where, who came, what we do, what is in the bag, go. */
export function TonightPage({ tonight }: { readonly tonight: Tonight }) {
  const { kit, chosen, evening, change, facts, planned, outbox } = tonight
  const { date } = chosen
  const venue = facts?.space.venue
  return (
    <FieldFrame
      club={kit.club.name}
      team={kit.club.demo ? `${kit.team.name} · ${tonightMessage('demo')}` : kit.team.name}
      standing={<Standing kitState={tonight.kitState} outbox={outbox} isKept={tonight.isKept} />}
      title={
        venue === undefined
          ? tonightMessage('titleNoSpace', { start: date.localStart })
          : tonightMessage('titleAt', { start: date.localStart, venue })
      }
      lead={
        <>
          <p>{whenWords(tonight)}</p>
          <Circumstances {...tonight} />
        </>
      }
      presses={<NextPressLink tonight={tonight} />}
    >
      <RefusedList
        kit={kit}
        waiting={outbox.waiting ?? []}
        onDismiss={(each) => {
          void outbox.dismiss(each.operation.id)
          if (each.operation.id === evening.reportId) change({ kind: 'reported', reportId: null })
          if (each.operation.id === evening.kept?.planId) change({ kind: 'plan-refused' })
        }}
      />
      <div>
        <WhoCame kit={kit} evening={evening} change={change} />
        <SitsOutAndGuests kit={kit} evening={evening} change={change} />
      </div>
      <PlanSummary tonight={tonight} />
      <Ways tonight={tonight} />
      {planned.plan !== null && (
        <FieldSection title={tonightMessage('cautionsTitle')}>
          <Cautions kit={kit} adults={evening.adults} />
        </FieldSection>
      )}
    </FieldFrame>
  )
}

function PlanSummary({ tonight }: { readonly tonight: Tonight }) {
  const { kit, chosen, facts, planned } = tonight
  const { plan, change, isPlanning, fault } = planned
  if (facts === null) return <EmptyState>{tonightMessage('noSpaceLead')}</EmptyState>
  const stage = kit.adopted?.content.progressions
    .flatMap((progression) => progression.stages)
    .find((each) => each.stageId === plan?.stage?.stageId)
  const why = plan?.notes.filter((note) => WHY_CODES.some((code) => code === note.code)) ?? []
  return (
    <>
      <FieldSection
        title={tonightMessage('tonight')}
        figure={tonightMessage('minutesTotal', { minutes: chosen.date.minutes })}
      >
        {/* Stands before it has something to say, else it is not heard. */}
        <p role="status" className={change === null || isPlanning ? 'sr-only' : 'bg-here px-2 py-1 font-semibold'}>
          {isPlanning ? tonightMessage('planning') : change}
        </p>
        {fault !== null && <p role="alert">{tonightMessage('planFault', { fault })}</p>}
        {stage !== undefined && why.every((note) => note.code !== 'stage-chosen') && (
          <p>{tonightMessage('stageIs', { stage: stage.title })}</p>
        )}
        {why.map((note) => (
          <p key={note.sentence} className="leading-tight">
            {note.sentence}
          </p>
        ))}
        {plan !== null && <EveningLine plan={plan} localStart={chosen.date.localStart} />}
      </FieldSection>
      {plan !== null && <Bag plan={plan} equipment={kit.equipment} />}
    </>
  )
}

/** What a coach must know before starting; the other remarks stand with the plan. */
const WHY_CODES = [
  'games-only',
  'no-version',
  'no-stage',
  'space-too-small',
  'stage-chosen',
  'too-few-children',
  'goalkeeper-asked',
] as const

function Ways({ tonight: { kit, chosen, evening, planned, hrefOf, nowMs, keepPlan } }: { readonly tonight: Tonight }) {
  const unreported = findUnreported(kit.dates, nowMs, chosen.date.dateId)
  const isReported = evening.reportId !== null || chosen.date.reported
  const use = () => void keepPlan()
  return (
    <nav aria-label={tonightMessage('ways')}>
      <ul className="flex flex-col border-t border-wire">
        {planned.plan !== null && (
          <>
            <Way href={hrefOf('plan')}>{tonightMessage('goPlan')}</Way>
            <Way href={hrefOf('set-out')} onGo={use}>
              {tonightMessage('goSetOut')}
            </Way>
            {patternActivity(planned.plan) !== null && (
              <Way href={hrefOf('line-ups')} onGo={use}>
                {tonightMessage('goLineUps')}
              </Way>
            )}
            <Way href={hrefOf('sheet')} onGo={use}>
              {tonightMessage('goSheet')}
            </Way>
          </>
        )}
        <Way href={hrefOf('report')}>{tonightMessage(isReported ? 'reported' : 'goReport')}</Way>
        {unreported !== null && (
          <Way href={hrefOf('report', unreported.dateId)}>
            {tonightMessage('unreported', { day: dayWords(unreported.localDate) })}
          </Way>
        )}
      </ul>
    </nav>
  )
}

type WayProps = { readonly href: string; readonly onGo?: () => void; readonly children: string }

function Way({ href, onGo, children }: WayProps) {
  return (
    <li className="border-b border-wire">
      <ViewLink
        href={href}
        {...(onGo === undefined ? {} : { onGo })}
        className="flex min-h-target items-center font-semibold no-underline hover:underline"
      >
        {children}
      </ViewLink>
    </li>
  )
}

const PRESSES = {
  'set-out': { view: 'set-out', words: 'pressSetOut' },
  'line-ups': { view: 'line-ups', words: 'pressLineUps' },
  plan: { view: 'plan', words: 'pressPlan' },
  report: { view: 'report', words: 'pressReport' },
} as const

function NextPressLink({ tonight }: { readonly tonight: Tonight }) {
  const { planned, evening, chosen, nowMs, hrefOf, keepPlan } = tonight
  if (planned.plan === null) return null
  const press = nextPress({
    stops: planned.plan.setOut.length,
    putDown: evening.putDown,
    hasPattern: patternActivity(planned.plan) !== null,
    isOver: nowMs >= endOf(chosen.date),
  })
  const words = press === 'set-out' && evening.putDown > 0 ? 'pressSetOutOn' : PRESSES[press].words
  return (
    <ViewLink
      href={hrefOf(PRESSES[press].view)}
      className={pressClasses('next', 'flex-1')}
      onGo={() => {
        if (press !== 'report') void keepPlan()
      }}
    >
      {tonightMessage(words)}
    </ViewLink>
  )
}

function whenWords({ chosen: { date, when }, nowMs }: Tonight): string {
  const day = dayWords(date.localDate)
  if (when === 'later') return tonightMessage('noSessionToday', { day })
  if (when === 'past') return tonightMessage('pastSession', { day })
  const minutes = Math.round((date.startsAt - nowMs) / 60_000)
  const rest =
    nowMs >= endOf(date)
      ? tonightMessage('over')
      : minutes <= 0
        ? tonightMessage('nowOn')
        : minutes === 1
          ? tonightMessage('inOneMinute')
          : minutes < 120
            ? tonightMessage('inMinutes', { minutes })
            : tonightMessage('inHours', { hours: Math.round(minutes / 60) })
  return `${day}. ${rest}`
}

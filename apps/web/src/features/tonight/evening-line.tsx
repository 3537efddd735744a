import type { PlannedActivity, PlannedPause, SessionPlan } from '@espalier/domain/session'
import type { ReactNode } from 'react'
import { tonightMessage } from '../../messages/tonight'
import { classNames } from '../../ui/class-names'
import { clockAfter, eveningParts } from './evening-parts'

type EveningLineProps = {
  readonly plan: SessionPlan
  readonly localStart: string
  /** Page units of the line for each minute. */
  readonly unitsAMinute?: number
}

/** The evening as one line whose length is minutes and whose thick part is tonight's pattern; dotted where nobody plays. */
export function EveningLine({ plan, localStart, unitsAMinute = 5.4 }: EveningLineProps) {
  const end = clockAfter(localStart, plan.totalMinutes)
  return (
    <ol className="flex flex-col" aria-label={tonightMessage('minutesWord', { minutes: plan.totalMinutes })}>
      {eveningParts(plan).map((part) =>
        part.kind === 'activity' ? (
          <Row
            key={part.activity.activityId}
            clock={clockAfter(localStart, part.startMinute)}
            line={part.activity.kind === 'pattern' ? 'thick' : 'plain'}
            minutes={part.activity.minutes}
            unitsAMinute={unitsAMinute}
          >
            <ActivityWords activity={part.activity} />
          </Row>
        ) : (
          <Row
            key={`pause ${part.startMinute}`}
            clock={null}
            line={part.pause.kind === 'close' ? 'plain' : 'dotted'}
            minutes={part.pause.minutes}
            unitsAMinute={unitsAMinute}
          >
            <PauseWords pause={part.pause} />
          </Row>
        ),
      )}
      <li className="grid grid-cols-[3.1rem_1.4rem_1fr] text-ink-soft leading-none">
        <span>{end}</span>
        <span className="mt-1.5 h-[3px] w-3.5 justify-self-center bg-frame" />
      </li>
    </ol>
  )
}

const LINES = {
  plain: 'w-[5px] bg-frame',
  thick: 'w-[15px] bg-frame',
  dotted: 'w-0 border-l-[3px] border-dotted border-frame',
} as const

type RowProps = {
  readonly clock: string | null
  readonly line: keyof typeof LINES
  readonly minutes: number
  readonly unitsAMinute: number
  readonly children: ReactNode
}

/** An empty drawing as tall as the minutes gives the row its length; words that need more make it longer. */
function Row({ clock, line, minutes, unitsAMinute, children }: RowProps) {
  return (
    <li className="grid grid-cols-[3.1rem_1.4rem_1fr_0]">
      <span className="leading-tight text-ink-soft">{clock}</span>
      <span aria-hidden="true" className="relative flex justify-center">
        <span className={classNames('block', LINES[line])} />
        {clock !== null && (
          <span className={classNames('absolute top-2 h-[3px] bg-frame', line === 'thick' ? 'w-6' : 'w-4')} />
        )}
      </span>
      {children}
      <svg aria-hidden="true" width="0" height={Math.round(minutes * unitsAMinute)} />
    </li>
  )
}

function ActivityWords({ activity }: { readonly activity: PlannedActivity }) {
  const isTheme = activity.kind === 'pattern'
  return (
    <div className="flex justify-between gap-3 pb-1 pl-2">
      <div className="min-w-0">
        <p
          className={classNames(
            'voice-club leading-tight',
            isTheme ? 'text-lead font-[600]' : 'text-script font-[560]',
          )}
        >
          {activity.title}
        </p>
        <p className={classNames('leading-tight', isTheme ? 'text-small text-ink' : 'text-small text-ink-soft')}>
          {activity.detail}
        </p>
      </div>
      <Minutes minutes={activity.minutes} isTheme={isTheme} />
    </div>
  )
}

function Minutes({ minutes, isTheme }: { readonly minutes: number; readonly isTheme: boolean }) {
  return (
    <p className={classNames('shrink-0 leading-tight font-bold', isTheme ? 'text-lead' : 'text-body')}>
      <span aria-hidden="true">{minutes}</span>
      <span className="sr-only">{tonightMessage('minutesWord', { minutes })}</span>
    </p>
  )
}

function PauseWords({ pause }: { readonly pause: PlannedPause }) {
  return (
    <div className="flex justify-between gap-3 pl-2 text-small leading-tight text-ink-soft">
      <p>{pause.title}</p>
      <p className="shrink-0">
        <span aria-hidden="true">{pause.minutes}</span>
        <span className="sr-only">{tonightMessage('minutesWord', { minutes: pause.minutes })}</span>
      </p>
    </div>
  )
}

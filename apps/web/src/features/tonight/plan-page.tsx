import type { PlannedActivity } from '@espalier/domain/session'
import { AreasDrawing } from '../../drawing/areas-drawing'
import { tonightMessage } from '../../messages/tonight'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { BackLink } from './back-link'
import { Cautions } from './cautions'
import { childNames } from './child-names'
import { clockAfter } from './evening-parts'
import { FieldFrame, FieldSection } from './field-frame'
import { Groups } from './groups'
import { Standing } from './standing'
import type { Tonight } from './use-tonight'
import { ViewLink } from './view-link'

/** The evening, activity by activity: where, who with whom, what rules, what to say. */
export function PlanPage({ tonight }: { readonly tonight: Tonight }) {
  const { kit, planned, evening, hrefOf } = tonight
  const plan = planned.plan
  const version = kit.adopted
  return (
    <FieldFrame
      club={kit.club.name}
      team={kit.team.name}
      standing={<Standing kitState={tonight.kitState} outbox={tonight.outbox} isKept={tonight.isKept} />}
      back={<BackLink hrefOf={hrefOf} />}
      title={tonightMessage('planTitle')}
      lead={
        version === null
          ? tonightMessage('noVersion')
          : tonightMessage('versionLine', { name: version.content.name, number: version.number })
      }
    >
      {plan === null ? (
        <EmptyState>{tonightMessage('planning')}</EmptyState>
      ) : (
        <>
          {plan.notes.length > 0 && (
            <FieldSection title={tonightMessage('notes')}>
              <ul className="flex flex-col gap-2">
                {plan.notes.map((note) => (
                  <li key={note.sentence} className="border-l-2 border-dotted border-ink-soft pl-3 leading-snug">
                    {note.sentence}
                  </li>
                ))}
              </ul>
            </FieldSection>
          )}
          {plan.activities.map((activity) => (
            <Activity key={activity.activityId} activity={activity} tonight={tonight} />
          ))}
          <FieldSection title={tonightMessage('cautionsTitle')}>
            <Cautions kit={kit} adults={evening.adults} withSources />
          </FieldSection>
        </>
      )}
    </FieldFrame>
  )
}

function Activity({ activity, tonight }: { readonly activity: PlannedActivity; readonly tonight: Tonight }) {
  const { kit, chosen, planned, hrefOf } = tonight
  const start = clockAfter(chosen.date.localStart, activity.startMinute)
  const space = planned.facts?.space
  return (
    <section className="flex flex-col gap-2 border-t-2 border-ink pt-3">
      <div className="flex items-baseline justify-between gap-4">
        <h2 className="voice-club text-lead leading-tight font-[560]">{activity.title}</h2>
        <p className="shrink-0 font-bold">{tonightMessage('minutesTotal', { minutes: activity.minutes })}</p>
      </div>
      <p className="text-ink-soft">
        {tonightMessage('fromClock', { start })}
        {activity.detail === '' ? '' : `, ${activity.detail}`}
      </p>
      {space !== undefined && activity.areas.length > 0 && (
        <AreasDrawing
          title={activity.title}
          space={space}
          areas={activity.areas}
          medium="phone"
          choices={kit.adopted?.content.settings}
        />
      )}
      <Groups activity={activity} nameOf={childNames(kit)} />
      <ClubWords title={tonightMessage('conditions')} words={activity.conditions} />
      <ClubWords title={tonightMessage('points')} words={activity.points} />
      {activity.lineups !== null && (
        <ViewLink href={hrefOf('line-ups')} className="flex min-h-target items-center font-semibold">
          {tonightMessage('goLineUps')}
        </ViewLink>
      )}
    </section>
  )
}

function ClubWords({ title, words }: { readonly title: string; readonly words: readonly string[] }) {
  if (words.length === 0) return null
  return (
    <div>
      <h3 className="font-semibold">{title}</h3>
      <ul className="voice-club text-script leading-snug">
        {words.map((word) => (
          <li key={word}>{word}</li>
        ))}
      </ul>
    </div>
  )
}

import type { Team } from '@espalier/contract/places'
import { TEAM_REACH_CHECK } from '@espalier/domain/check'
import type { VersionContent } from '@espalier/domain/curriculum'
import type { MeasuredReach } from '@espalier/domain/session'
import { teamsMessage } from '../../messages/teams'
import { dateWords } from '../../shell/dates'
import { Origin } from '../../ui/origin/origin'
import { listBeyondReach } from './beyond-reach'

type TeamReachProps = {
  readonly reach: Team['reach']
  /** What the team follows, or null where it follows nothing yet. */
  readonly content: VersionContent | null
}

/** What was measured of a team, what that means for the patterns it follows, and how a coach measures it. */
export function TeamReach({ reach, content }: TeamReachProps) {
  const [lead, ...steps] = TEAM_REACH_CHECK
  return (
    <>
      {reach === null ? (
        <p className="max-w-text">{teamsMessage('reachNone')}</p>
      ) : (
        <p className="max-w-text">
          {teamsMessage('reachMeasured', {
            strong: reach.strongFootMm / 1000,
            other: reach.otherFootMm / 1000,
            date: dateWords(reach.measuredOn),
          })}{' '}
          <Origin word={teamsMessage('reachOrigin')}>{teamsMessage('reachSource')}</Origin>
        </p>
      )}
      {reach !== null && content !== null && <BeyondReachList reach={reach} content={content} />}
      <h3 className="font-semibold">{teamsMessage('reachHow')}</h3>
      <p className="max-w-text">{lead}</p>
      <ol className="flex max-w-text list-decimal flex-col gap-1 pl-6">
        {steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
    </>
  )
}

function BeyondReachList({ reach, content }: { readonly reach: MeasuredReach; readonly content: VersionContent }) {
  const beyond = listBeyondReach(content, reach)
  if (beyond.length === 0) return <p className="max-w-text">{teamsMessage('reachAllWithin')}</p>
  return (
    <>
      <h3 className="font-semibold">{teamsMessage('reachBeyond')}</h3>
      <ul className="flex max-w-text flex-col gap-2">
        {beyond.map(({ patternId, title, sentences }) => (
          <li key={patternId}>
            <span className="font-club">{title}</span>
            <ul className="pl-4 text-small text-ink-soft">
              {sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
    </>
  )
}

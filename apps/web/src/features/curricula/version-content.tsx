import { checkChoicesOf } from '@espalier/domain/check'
import type { ModelSession, Stage, VersionContent } from '@espalier/domain/curriculum'
import { curriculaMessage } from '../../messages/curricula'
import { Section } from '../../shell/section'
import { PatternReader } from '../pattern-page/pattern-reader'
import { ACTIVITY_WORDS, countWordsOf, formWords, pressureWord } from './draft-words'

/** The frozen content of a version, as it was published. */
export function VersionContentRead({ content }: { readonly content: VersionContent }) {
  const titleOf = (patternId: string) =>
    content.patterns.find((pattern) => pattern.patternId === patternId)?.document.title ?? ''
  const choices = checkChoicesOf(content.settings)
  return (
    <>
      {content.progressions.map((progression) => (
        <Section key={progression.progressionId} id={progression.progressionId} title={progression.title}>
          <StageList stages={progression.stages} titleOf={titleOf} />
          {progression.after.length > 0 && (
            <p className="text-small text-ink-soft">
              {curriculaMessage('afterThese', {
                titles: progression.after
                  .map((id) => content.progressions.find(({ progressionId }) => progressionId === id)?.title ?? '')
                  .join(', '),
              })}
            </p>
          )}
        </Section>
      ))}
      <Section id="sessions" title={curriculaMessage('sessions')}>
        {content.modelSessions.map((session) => (
          <SessionRead key={session.modelSessionId} session={session} content={content} />
        ))}
      </Section>
      {content.patterns.map(({ patternId, document }) => (
        <section
          key={patternId}
          id={`pattern-${patternId}`}
          aria-labelledby={`title-${patternId}`}
          className="flex flex-col gap-3 border-t border-ink pt-4"
        >
          <h2 id={`title-${patternId}`} className="voice-club text-title leading-tight font-[560]">
            {document.title}
          </h2>
          <PatternReader document={document} choices={choices} />
        </section>
      ))}
    </>
  )
}

type StageListProps = {
  readonly stages: readonly Stage[]
  readonly titleOf: (patternId: string) => string
}

function StageList({ stages, titleOf }: StageListProps) {
  return (
    <ol>
      {stages.map((stage, index) => (
        <li key={stage.stageId} className="flex gap-3 border-t border-wire py-2">
          <span className="voice-club w-6 shrink-0 text-center text-lead leading-tight text-ink-soft">{index + 1}</span>
          <div className="min-w-0">
            <p className="voice-club text-script font-semibold">{stage.title}</p>
            <p>
              <a href={`#pattern-${stage.patternId}`} className="voice-club inline-flex min-h-target items-center">
                {titleOf(stage.patternId)}
              </a>
              , {formWords(stage)}, {pressureWord(stage.pressure)}
            </p>
            {stage.conditions.length > 0 && <p className="voice-club text-ink-soft">{stage.conditions.join('. ')}</p>}
          </div>
        </li>
      ))}
    </ol>
  )
}

function SessionRead({ session, content }: { readonly session: ModelSession; readonly content: VersionContent }) {
  const stages = content.progressions.flatMap((progression) => progression.stages)
  const total = session.activities.reduce((sum, activity) => sum + activity.minutes, 0)
  return (
    <div>
      <h3 className="voice-club text-script font-semibold">
        {session.title}{' '}
        <span className="font-normal text-ink-soft">{curriculaMessage('minutesTotal', { minutes: total })}</span>
      </h3>
      <ol>
        {session.activities.map((activity) => (
          <li key={activity.activityId} className="border-t border-wire py-2">
            <p>
              <span className="voice-club font-semibold">{activity.title}</span>{' '}
              <span className="text-ink-soft">
                {curriculaMessage(ACTIVITY_WORDS[activity.kind])},{' '}
                {curriculaMessage('minutes', { minutes: activity.minutes })}
              </span>
            </p>
            {activity.kind === 'pattern' && (
              <p className="voice-club">
                {stages.find(({ stageId }) => stageId === activity.stageId)?.title ?? curriculaMessage('nextStage')}
              </p>
            )}
            {activity.conditions.length > 0 && <p className="voice-club">{activity.conditions.join('. ')}</p>}
            {activity.points.length > 0 && (
              <p className="voice-club italic text-ink-soft">{activity.points.join('. ')}</p>
            )}
          </li>
        ))}
      </ol>
    </div>
  )
}

/** "2 progressions with 5 stages, 1 model session, 3 patterns." */
export function contentWords(content: VersionContent): string {
  const stages = content.progressions.reduce((sum, progression) => sum + progression.stages.length, 0)
  return curriculaMessage('contentLine', {
    progressions: countWordsOf(content.progressions.length, 'oneProgression'),
    stages: countWordsOf(stages, 'oneStage'),
    sessions: countWordsOf(content.modelSessions.length, 'oneSession'),
    patterns: countWordsOf(content.patterns.length, 'onePattern'),
  })
}

import { useState } from 'react'
import { PatternDrawing } from '../../drawing/pattern-drawing'
import { lineUpsMessage } from '../../messages/line-ups'
import { Button } from '../../ui/button/button'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { BackLink } from './back-link'
import { blockRounds, roundsText } from './block-rounds'
import { childNames } from './child-names'
import { patternActivity } from './evening-parts'
import { FieldFrame } from './field-frame'
import { LineUp } from './line-up'
import { PatternScript } from './pattern-script'
import { PatternTeaching } from './pattern-teaching'
import { onSide, stagePattern } from './stage-pattern'
import { Standing } from './standing'
import type { Tonight } from './use-tonight'

/** The pattern activity: this line-up on the drawing, its sentences, and the next line-up one press away. */
export function LineUpsPage({ tonight }: { readonly tonight: Tonight }) {
  const { kit, planned, hrefOf } = tonight
  const [number, setNumber] = useState(0)
  const activity = planned.plan === null ? null : patternActivity(planned.plan)
  const blocks = activity?.lineups?.blocks ?? []
  // A smaller plan may have fewer line-ups than the one read before.
  const at = Math.min(number, Math.max(0, blocks.length - 1))
  const block = blocks[at]
  const frame = {
    club: kit.club.name,
    team: kit.team.name,
    standing: <Standing kitState={tonight.kitState} outbox={tonight.outbox} isKept={tonight.isKept} />,
    back: <BackLink hrefOf={hrefOf} />,
    title: lineUpsMessage('lineUpsTitle'),
  }
  if (activity === null || block === undefined || activity.lineups === null)
    return (
      <FieldFrame {...frame}>
        <EmptyState>{lineUpsMessage('noPattern')}</EmptyState>
      </FieldFrame>
    )
  const isLast = at === blocks.length - 1
  return (
    <FieldFrame
      {...frame}
      lead={
        <p>
          <span className="voice-club text-script text-ink">{activity.title}</span>, {activity.detail}
        </p>
      }
      presses={
        <>
          {at > 0 && (
            <Button className="min-h-target-next" onClick={() => setNumber(at - 1)}>
              {lineUpsMessage('blockBack')}
            </Button>
          )}
          <Button kind="next" className="flex-1" onClick={() => setNumber(isLast ? 0 : at + 1)}>
            {isLast ? lineUpsMessage('blockFirst') : lineUpsMessage('blockNext')}
          </Button>
        </>
      }
    >
      <LineUp
        block={block}
        before={blocks[at - 1] ?? null}
        formation={formationOf(tonight, activity.stageId)}
        opponents={activity.opponents}
        nameOf={childNames(kit)}
        title={lineUpsMessage('blockTitle', {
          rounds: roundsText(blockRounds(activity)[at] ?? []),
          side: lineUpsMessage(`side-${block.side}`),
        })}
        figure={lineUpsMessage('blockOf', { number: at + 1, all: blocks.length })}
      />
      <PatternOfTonight tonight={tonight} block={block} stageId={activity.stageId} />
      <Fairness lineups={activity.lineups} />
    </FieldFrame>
  )
}

function formationOf({ kit }: Tonight, stageId: string | null): readonly string[] {
  return stagePattern(kit, stageId)?.document.positions.map((placed) => placed.position) ?? []
}

type Lineups = NonNullable<NonNullable<ReturnType<typeof patternActivity>>['lineups']>

function PatternOfTonight({
  tonight: { kit, planned },
  block,
  stageId,
}: {
  readonly tonight: Tonight
  readonly block: Lineups['blocks'][number]
  readonly stageId: string | null
}) {
  const [step, setStep] = useState<number | null>(null)
  const trained = stagePattern(kit, stageId)
  const space = planned.facts?.space
  if (trained === null || space === undefined) return null
  const document = onSide(trained.document, block.side)
  const nameOf = childNames(kit)
  const names = Object.fromEntries(block.places.map((place) => [place.position, nameOf(place.childId)]))
  return (
    <>
      <div className="top-0 z-10 border-b-2 border-ink bg-sheet pb-2 [@media(min-height:720px)]:sticky">
        <PatternDrawing
          document={document}
          space={space}
          medium="phone"
          step={step ?? undefined}
          names={names}
          choices={kit.adopted?.content.settings}
          cropped
          inWords={false}
        />
      </div>
      <PatternScript document={document} step={step} onStep={setStep} />
      <PatternTeaching teaching={document.teaching} conditions={trained.stage.conditions} />
    </>
  )
}

/** Said only of what is proven: the sums are, the number of changes is where the solver says so. */
function Fairness({ lineups }: { readonly lineups: Lineups }) {
  return (
    <p className="text-small text-ink-soft">
      {lineups.fairnessProven && `${lineUpsMessage('fair')} `}
      {lineups.changes === 0
        ? lineUpsMessage('changesNone')
        : lineUpsMessage(lineups.changesProven ? 'changesProven' : 'changesFound', { count: lineups.changes })}
    </p>
  )
}

import { type SetOutSentence, type SetOutStop, setOutSentences } from '@espalier/domain/session'
import { useEffect, useRef } from 'react'
import { SetOutDrawing } from '../../drawing/set-out-drawing'
import { setOutMessage } from '../../messages/set-out'
import { tonightMessage } from '../../messages/tonight'
import { Button, pressClasses } from '../../ui/button/button'
import { EmptyState } from '../../ui/empty-state/empty-state'
import { BackLink } from '../tonight/back-link'
import { PaceSelect } from '../tonight/circumstances'
import { patternActivity } from '../tonight/evening-parts'
import { FieldFrame } from '../tonight/field-frame'
import { Standing } from '../tonight/standing'
import type { Tonight } from '../tonight/use-tonight'
import { ViewLink } from '../tonight/view-link'
import { SetOutCheckLines } from './set-out-check-lines'
import { SetOutStopLine, type StopState } from './set-out-stop-line'

/** The walk that puts everything out: the drawing and the sentences number the same stops. */
export function SetOutPage({ tonight }: { readonly tonight: Tonight }) {
  const { kit, planned, evening, paceMm, choosePace, hrefOf } = tonight
  const { plan, facts } = planned
  const stops = plan?.setOut ?? []
  const isEmpty = stops.length <= 1
  return (
    <FieldFrame
      club={kit.club.name}
      team={kit.team.name}
      standing={<Standing kitState={tonight.kitState} outbox={tonight.outbox} isKept={tonight.isKept} />}
      back={<BackLink hrefOf={hrefOf} />}
      title={
        plan === null || isEmpty ? setOutMessage('title') : setOutMessage('titlePaces', { paces: plan.setOutPaces })
      }
      aside={<PaceSelect paceMm={paceMm} choosePace={choosePace} />}
      presses={isEmpty ? undefined : <Presses tonight={tonight} stops={stops} />}
    >
      {isEmpty || facts === null || plan === null ? (
        <EmptyState>{setOutMessage('nothing')}</EmptyState>
      ) : (
        <>
          <div
            className={
              facts.space.lengthMm <= facts.space.widthMm
                ? 'top-0 z-10 border-b-2 border-ink bg-sheet pb-2 [@media(min-height:720px)]:sticky'
                : 'border-b-2 border-ink pb-2'
            }
          >
            <SetOutDrawing
              space={facts.space}
              stops={stops}
              medium="phone"
              current={stops[evening.putDown]?.number ?? stops.length}
              choices={kit.adopted?.content.settings}
            />
          </div>
          <StopLines stops={stops} putDown={evening.putDown} />
          <p className="text-small text-ink-soft">{setOutMessage('sources')}</p>
          {evening.putDown >= stops.length && <SetOutCheckLines checks={plan.setOutChecks} />}
        </>
      )}
    </FieldFrame>
  )
}

function StopLines({ stops, putDown }: { readonly stops: readonly SetOutStop[]; readonly putDown: number }) {
  const here = useRef<HTMLLIElement>(null)
  useEffect(() => {
    const isStill = window.matchMedia('(prefers-reduced-motion: reduce)').matches
    if (putDown > 0) here.current?.scrollIntoView({ block: 'center', behavior: isStill ? 'auto' : 'smooth' })
  }, [putDown])
  return (
    <ol className="flex flex-col">
      {setOutSentences(stops).map((sentence, index) => (
        <SetOutStopLine
          key={sentence.number}
          sentence={sentence}
          state={stateOf(index, putDown)}
          {...(index === putDown ? { lineRef: here } : {})}
        />
      ))}
    </ol>
  )
}

function stateOf(index: number, putDown: number): StopState {
  if (index < putDown) return 'done'
  return index === putDown ? 'here' : 'ahead'
}

function Presses({ tonight, stops }: { readonly tonight: Tonight; readonly stops: readonly SetOutStop[] }) {
  const { evening, change, hrefOf, planned } = tonight
  const { putDown } = evening
  const sentence = setOutSentences(stops)[putDown]
  const put = (next: number) => change({ kind: 'put-down', stops: next })
  if (sentence === undefined) {
    const hasPattern = planned.plan !== null && patternActivity(planned.plan) !== null
    return (
      <>
        <Button className="min-h-target-next" onClick={() => put(0)}>
          {setOutMessage('again')}
        </Button>
        <ViewLink href={hrefOf(hasPattern ? 'line-ups' : 'plan')} className={pressClasses('next', 'flex-1')}>
          {hasPattern ? setOutMessage('goLineUps') : tonightMessage('pressPlan')}
        </ViewLink>
      </>
    )
  }
  return (
    <>
      {putDown > 0 && (
        <Button className="min-h-target-next" onClick={() => put(putDown - 1)}>
          {setOutMessage('back')}
        </Button>
      )}
      <Button kind="next" className="flex-1" onClick={() => put(putDown + 1)}>
        {pressWords(sentence, putDown, stops.length)}
      </Button>
    </>
  )
}

/** The press names the thing just put down. */
function pressWords(sentence: SetOutSentence, putDown: number, all: number): string {
  if (putDown === 0) return setOutMessage('bagDown')
  return setOutMessage(putDown === all - 1 ? 'lastDown' : 'isDown', { item: sentence.item })
}

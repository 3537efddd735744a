import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { Origin } from '../../ui/origin/origin'
import type { OnChange } from './change-callback'
import { originWord } from './margin-notes'
import { type PatternReading, usualStepsMost } from './pattern-reading'
import { STEPS_MAX } from './step-limits'

type ScriptTailProps = { readonly reading: PatternReading; readonly onChange: OnChange }

/** Under the script: the next step, how long it all takes, and how long is usual. */
export function ScriptTail({ reading, onChange }: ScriptTailProps) {
  const { document, check } = reading
  const count = document.steps.length
  const most = usualStepsMost(document.ageGroup)
  return (
    <div className="flex flex-col gap-1">
      <div className="flex flex-wrap items-baseline justify-between gap-x-4">
        <Button
          kind="quiet"
          offBecause={count < STEPS_MAX.trunk ? null : patternsMessage('addStepOff')}
          onClick={() => onChange({ kind: 'insert-step', list: { kind: 'trunk' }, at: count })}
        >
          {patternsMessage('addStep')}
        </Button>
        {check !== null && (
          <span className="text-small text-ink-soft">
            {patternsMessage('endsAt', { seconds: check.timeline.endsAt.toFixed(1) })}
          </span>
        )}
      </div>
      {count > most && (
        <div className="border-l-2 border-dotted border-ink-soft pl-3 text-small">
          <p>{patternsMessage('habitSteps', { count, most, age: document.ageGroup })}</p>
          <Origin word={originWord('habit')}>{patternsMessage('habitSource')}</Origin>
        </div>
      )}
    </div>
  )
}

import type { SetOutCheck } from '@espalier/domain/session'
import { useEffect, useRef } from 'react'
import { setOutMessage } from '../../messages/set-out'
import { FieldSection } from '../tonight/field-frame'

/** The walk ends in a check: distances that must come out. */
export function SetOutCheckLines({ checks }: { readonly checks: readonly SetOutCheck[] }) {
  const end = useRef<HTMLDivElement>(null)
  useEffect(() => {
    // In braces: newer browsers answer a scroll with a promise, which is no clean-up of an effect.
    end.current?.scrollIntoView({ block: 'end' })
  }, [])
  return (
    <div ref={end} className="scroll-mb-28">
      <FieldSection title={setOutMessage('allOut')}>
        {checks.length > 0 && (
          <>
            <ul role="status" className="flex flex-col gap-1 bg-here px-2 py-1 font-semibold">
              {checks.map((check) => (
                <li key={`${check.fromNumber} ${check.toNumber}`}>
                  {setOutMessage('checkLine', { from: check.fromNumber, to: check.toNumber, paces: check.paces })}
                </li>
              ))}
            </ul>
            <p className="text-ink-soft">{setOutMessage('checkOff')}</p>
          </>
        )}
      </FieldSection>
    </div>
  )
}

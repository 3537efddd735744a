import type { ReactNode } from 'react'
import { classNames } from '../../ui/class-names'
import { isToldOf, isWorking, type UnderPressure } from './use-under-pressure'

type ToldProps = {
  readonly told: UnderPressure['pressure'] | UnderPressure['looks']
  readonly under: UnderPressure
  readonly children: ReactNode
}

/** An answer to an older question stays in its place, so that nothing moves; the lines above it say what it is. */
export function Told({ told, under, children }: ToldProps) {
  return (
    <div
      aria-busy={isWorking(under)}
      data-revision={told?.question.revision}
      className={classNames(isOld(told, under) && 'pattern-told-old')}
    >
      {children}
    </div>
  )
}

/** Something is told, of what stood on the page before. */
export function isOld(told: ToldProps['told'], { asked }: UnderPressure): boolean {
  return told !== null && !isToldOf(told, asked)
}

import type { Kit, KitDate } from '@espalier/domain/session'
import { useCallback, useEffect, useRef, useState } from 'react'
import * as z from 'zod/mini'
import { keep, readKept } from '../../offline/store'
import { changeEvening, type Evening, type EveningChange, eveningShape, newEvening } from './evening'
import { PACE_CHOICES_MM, USUAL_PACE_MM } from './evening-facts'

export type EveningState = {
  readonly evening: Evening | null
  readonly change: (change: EveningChange) => void
  /** Whether what is ticked lies safely on this phone; null before the first tick. */
  readonly isKept: boolean | null
}

/** The evening's ticks, kept on the phone with every tap. */
export function useEvening(kit: Kit | null, date: KitDate | null): EveningState {
  const [evening, setEvening] = useState<Evening | null>(null)
  const [isKept, setKept] = useState<boolean | null>(null)
  const dateId = date?.dateId

  useEffect(() => {
    let isWanted = true
    if (kit === null || date === null || evening?.dateId === date.dateId) return
    void readKept('evenings', date.dateId, eveningShape).then((kept) => {
      if (isWanted) setEvening(kept ?? newEvening(kit, date))
    })
    return () => {
      isWanted = false
    }
  }, [kit, date, evening])

  const standing = useRef<Evening | null>(null)
  standing.current = evening
  const change = useCallback((wanted: EveningChange) => {
    if (standing.current === null) return
    const after = changeEvening(standing.current, wanted)
    // Two taps in one frame must both count.
    standing.current = after
    setEvening(after)
    void keep('evenings', after.dateId, after).then(setKept)
  }, [])

  return { evening: evening?.dateId === dateId ? evening : null, change, isKept }
}

const PACE_KEY = 'pace'
const paceShape: z.ZodMiniType<number> = z.number().check(z.minimum(PACE_CHOICES_MM[0]), z.maximum(1000))

/** The coach's own pace in millimetres, the same every evening. */
export function usePace(): readonly [number, (paceMm: number) => void] {
  const [paceMm, setPace] = useState<number>(USUAL_PACE_MM)
  useEffect(() => {
    void readKept('settings', PACE_KEY, paceShape).then((kept) => {
      if (kept !== null) setPace(kept)
    })
  }, [])
  const choose = useCallback((chosen: number) => {
    setPace(chosen)
    void keep('settings', PACE_KEY, chosen)
  }, [])
  return [paceMm, choose]
}

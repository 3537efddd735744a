import type { EveningFacts, Kit } from '@espalier/domain/session'
import { useCallback, useEffect, useMemo, useState } from 'react'
import { newUuid, sha256Hex } from '../../api/identifiers'
import { todayIn } from '../../shell/dates'
import { type ChosenDate, chooseDate } from './choose-date'
import type { Evening, EveningChange } from './evening'
import { eveningFacts, inputsText } from './evening-facts'
import type { FieldAddress } from './field-address'
import { planOperations } from './plan-operations'
import type { Address } from './use-address'
import { useEvening, usePace } from './use-evening'
import { type KitState, useKit } from './use-kit'
import { type Outbox, useOutbox } from './use-outbox'
import { type Planned, usePlan } from './use-plan'

/** Everything one evening's pages show and change. */
export type Tonight = {
  readonly kit: Kit
  readonly memberId: string | null
  readonly chosen: ChosenDate
  readonly nowMs: number
  readonly evening: Evening
  readonly isKept: boolean | null
  readonly change: (change: EveningChange) => void
  readonly facts: EveningFacts | null
  readonly planned: Planned
  readonly paceMm: number
  readonly choosePace: (paceMm: number) => void
  readonly kitState: KitState
  readonly outbox: Outbox
  readonly hrefOf: Address['hrefOf']
  /** The plan is used now: it goes to the club with who came, once for the same facts. Answers its id. */
  readonly keepPlan: () => Promise<string | null>
}

export type TonightState = {
  readonly kitState: KitState
  readonly outbox: Outbox
  /** Null while there is no kit, no date, or the phone's ticks are still being read. */
  readonly tonight: Tonight | null
  readonly hasNoDate: boolean
}

export function useTonight(address: FieldAddress, hrefOf: Address['hrefOf']): TonightState {
  const kitState = useKit(address)
  const { kit, memberId } = kitState
  const outbox = useOutbox(address.clubId, memberId)
  const nowMs = useMinute()
  const chosen = useMemo(
    () => (kit === null ? null : chooseDate(kit.dates, todayIn(kit.club.zone, new Date(nowMs)), nowMs, address.dateId)),
    [kit, nowMs, address.dateId],
  )
  const date = chosen?.date ?? null
  const { evening, change, isKept } = useEvening(kit, date)
  const [paceMm, choosePace] = usePace()
  const facts = useMemo(
    () => (kit === null || date === null || evening === null ? null : eveningFacts(kit, date, evening, paceMm)),
    [kit, date, evening, paceMm],
  )
  const planned = usePlan(facts)
  const keepPlan = useKeepPlan(evening, planned, change, outbox)
  const tonight =
    kit === null || chosen === null || evening === null
      ? null
      : {
          ...{ kit, memberId, chosen, nowMs, evening, isKept, change, facts, planned, paceMm, choosePace },
          ...{ kitState, outbox, hrefOf, keepPlan },
        }
  return { kitState, outbox, tonight, hasNoDate: kit !== null && chosen === null }
}

function useKeepPlan(
  evening: Evening | null,
  { plan, facts }: Planned,
  change: (change: EveningChange) => void,
  outbox: Outbox,
): () => Promise<string | null> {
  const { write } = outbox
  return useCallback(async () => {
    if (evening === null || plan === null || facts === null || facts.date.dateId !== evening.dateId) return null
    const inputsHash = await sha256Hex(inputsText(facts))
    if (evening.kept?.inputsHash === inputsHash) return evening.kept.planId
    const stamp = { at: new Date().toISOString(), newId: () => newUuid() }
    const used = { facts, plan, spaceId: evening.spaceId, inputsHash }
    const { planId, operations } = planOperations(used, stamp)
    change({ kind: 'plan-kept', planId, inputsHash })
    await write(facts.kit.team.teamId, operations)
    return planId
  }, [evening, plan, facts, change, write])
}

const MINUTE_MS = 60_000

/** The clock, to the minute. */
function useMinute(): number {
  const [nowMs, setNow] = useState(() => Date.now())
  useEffect(() => {
    const timer = setInterval(() => setNow(Date.now()), MINUTE_MS)
    return () => clearInterval(timer)
  }, [])
  return nowMs
}

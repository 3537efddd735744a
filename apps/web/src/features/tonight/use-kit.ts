import { paths, pathTo } from '@espalier/contract/paths'
import { kit as kitShape } from '@espalier/contract/sessions'
import type { Kit } from '@espalier/domain/session'
import { useEffect, useState } from 'react'
import * as z from 'zod/mini'
import { type Failure, readIfNewer } from '../../api/browser'
import { findMember } from '../../api/find-member'
import { forgetNames, forgetOldNames, forgetTeam, isOldKit } from '../../offline/forget-names'
import { keep, readKept } from '../../offline/store'

/** A kit as it was kept. */
const keptKit = z.strictObject({
  tag: z.nullable(z.string()),
  keptAt: z.number(),
  memberId: z.nullable(z.string()),
  kit: kitShape,
})

export type KitState = {
  readonly kit: Kit | null
  /** Who this phone's owner is in the club, so that nobody is offered as their own second adult. */
  readonly memberId: string | null
  /** When the server was last heard of; null where never on this phone. */
  readonly keptAt: number | null
  readonly isAsking: boolean
  readonly failure: Failure | null
}

const EMPTY: KitState = { kit: null, memberId: null, keptAt: null, isAsking: true, failure: null }

type Ids = { readonly clubId: string; readonly teamId: string }

/** The kit: first as this phone keeps it, then newer if the server has it newer. */
export function useKit(ids: Ids | null): KitState {
  const [state, setState] = useState(EMPTY)
  const clubId = ids?.clubId
  const teamId = ids?.teamId
  useEffect(() => {
    window.addEventListener('pageshow', askAgainWhenBack)
    return () => window.removeEventListener('pageshow', askAgainWhenBack)
  }, [])
  useEffect(() => {
    if (clubId === undefined || teamId === undefined) return
    let isWanted = true
    const show = (next: KitState) => {
      if (isWanted) setState(next)
    }
    void loadKit({ clubId, teamId }, show)
    return () => {
      isWanted = false
    }
  }, [clubId, teamId])
  return state
}

/** A browser may bring a page back as it stood, with the names of somebody who has signed out since. */
function askAgainWhenBack(event: PageTransitionEvent): void {
  if (event.persisted) window.location.reload()
}

async function loadKit(ids: Ids, show: (state: KitState) => void): Promise<void> {
  const key = `${ids.clubId} ${ids.teamId}`
  const now = Date.now()
  await forgetOldNames(now)
  const found = await readKept('kits', key, keptKit)
  // Also where the old one could not be taken off.
  const kept = found !== null && !isOldKit(found.keptAt, now) ? found : null
  if (kept !== null) show({ ...kept, isAsking: true, failure: null })
  const [answer, { memberId }] = await Promise.all([
    readIfNewer(pathTo(paths.kit, ids), kept?.tag ?? null, kitShape),
    findMember(ids.clubId),
  ])
  if (!answer.ok) {
    const isGone = await forgetRefused(answer.failure, key, kept?.kit ?? null)
    show({ ...EMPTY, ...(isGone ? null : kept), isAsking: false, failure: answer.failure })
    return
  }
  const newest = answer.value === null ? kept : { kit: answer.value.value, tag: answer.value.tag }
  if (newest === null) return
  const next = { ...newest, keptAt: now, memberId: memberId ?? kept?.memberId ?? null }
  show({ kit: next.kit, memberId: next.memberId, keptAt: now, isAsking: false, failure: null })
  await keep('kits', key, { kit: next.kit, tag: next.tag, keptAt: now, memberId: next.memberId })
}

/**
 * Whoever is no longer signed in, or may no longer see the team, keeps no names: neither shown nor on the phone. A phone
 * out of reach, or a server in trouble, says nothing of the sort.
 */
async function forgetRefused(failure: Failure, kitKey: string, kit: Kit | null): Promise<boolean> {
  const status = failure.kind === 'problem' ? failure.problem.status : null
  if (status === 401) await forgetNames()
  else if (status === 403 || status === 404)
    await forgetTeam({ kitKey, dateIds: kit?.dates.map((date) => date.dateId) ?? [] })
  else return false
  return true
}

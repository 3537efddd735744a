import { paths, pathTo } from '@espalier/contract/paths'
import { type Operation, operationResults } from '@espalier/contract/records'
import { type Failure, sendCommandFor } from '../api/browser'
import { newUuid } from '../api/identifiers'
import { forget, keep, listKept } from './store'
import { BATCH_MAX, nextBatch, settle, type Waiting, waitingShape } from './waiting'

/** Puts writes in the outbox; true once they are safely on this phone. */
export async function enqueue(clubId: string, teamId: string, operations: readonly Operation[]): Promise<boolean> {
  const kept = await Promise.all(
    operations.map((operation) =>
      keep('outbox', operation.id, { clubId, teamId, operation, refusal: null } satisfies Waiting),
    ),
  )
  return kept.every(Boolean)
}

/** What this phone still holds of a club, waiting and refused. */
export async function listWaiting(clubId: string): Promise<readonly Waiting[]> {
  const all = await listKept('outbox', waitingShape).catch(() => [])
  return all.filter((each) => each.clubId === clubId)
}

export type SendOutcome = { readonly taken: readonly string[]; readonly failure: Failure | null }

/** Sends what waits, one batch after another, and keeps whatever the server did not take. One window at a time. */
export async function sendWaiting(clubId: string): Promise<SendOutcome> {
  return navigator.locks.request('espalier-outbox', () => sendBatches(clubId))
}

async function sendBatches(clubId: string): Promise<SendOutcome> {
  const taken: string[] = []
  for (;;) {
    const batch = nextBatch(await listWaiting(clubId), clubId)
    if (batch.length === 0) return { taken, failure: null }
    const sent = await sendCommandFor(
      {
        method: 'POST',
        path: pathTo(paths.operations, { clubId }),
        body: { operations: batch.map((each) => each.operation) },
        key: newUuid(),
      },
      operationResults,
    )
    if (!sent.ok) return { taken, failure: sent.failure }
    const settled = settle(batch, sent.value.results)
    await Promise.all(settled.taken.map((id) => forget('outbox', id)))
    await Promise.all(settled.refused.map((each) => keep('outbox', each.operation.id, each)))
    taken.push(...settled.taken)
    const moved = settled.taken.length + settled.refused.length
    if (batch.length < BATCH_MAX || moved === 0) return { taken, failure: null }
  }
}

/** Takes a refused write off the list, once its owner has read why. */
export function dismissRefused(id: string): Promise<boolean> {
  return forget('outbox', id)
}

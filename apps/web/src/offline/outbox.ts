import { paths, pathTo } from '@espalier/contract/paths'
import { type Operation, operationResults } from '@espalier/contract/records'
import { type Failure, sendCommandFor } from '../api/browser'
import { findMember } from '../api/find-member'
import { newUuid } from '../api/identifiers'
import { forget, keep, listKept } from './store'
import { BATCH_MAX, nextBatch, type Sender, settle, type Waiting, waitingShape } from './waiting'

/** Puts writes in the outbox; true once they are safely on this phone. */
export async function enqueue(sender: Sender, teamId: string, operations: readonly Operation[]): Promise<boolean> {
  const kept = await Promise.all(
    operations.map((operation) =>
      keep('outbox', operation.id, { ...sender, teamId, operation, refusal: null } satisfies Waiting),
    ),
  )
  return kept.every(Boolean)
}

/** What this phone still holds, of whichever club and member, waiting and refused. */
export async function listAllWaiting(): Promise<readonly Waiting[]> {
  return listKept('outbox', waitingShape).catch(() => [])
}

/** What this phone still holds of a club, waiting and refused. */
export async function listWaiting(clubId: string): Promise<readonly Waiting[]> {
  const all = await listAllWaiting()
  return all.filter((each) => each.clubId === clubId)
}

export type SendOutcome = { readonly taken: readonly string[]; readonly failure: Failure | null }

/** What sending needs of its surroundings; replaced by tests. */
export type Post = {
  readonly findMember: typeof findMember
  readonly send: typeof sendCommandFor
  readonly list: (clubId: string) => Promise<readonly Waiting[]>
  readonly keep: (each: Waiting) => Promise<boolean>
  readonly forget: (id: string) => Promise<boolean>
}

const phonePost: Post = {
  findMember,
  send: sendCommandFor,
  list: listWaiting,
  keep: (each) => keep('outbox', each.operation.id, each),
  forget: (id) => forget('outbox', id),
}

/** Sends what waits, one batch after another, and keeps whatever the server did not take. One window at a time. */
export async function sendWaiting(sender: Sender): Promise<SendOutcome> {
  return navigator.locks.request('espalier-outbox', () => sendBatches(sender, phonePost))
}

/** Each batch goes only while the server says that its writer is the one signed in: it would be put down to whoever is. */
export async function sendBatches(sender: Sender, post: Post): Promise<SendOutcome> {
  const taken: string[] = []
  for (;;) {
    const batch = nextBatch(await post.list(sender.clubId), sender)
    if (batch.length === 0) return { taken, failure: null }
    const { memberId, failure } = await post.findMember(sender.clubId)
    if (memberId !== sender.memberId) return { taken, failure }
    const sent = await post.send(
      {
        method: 'POST',
        path: pathTo(paths.operations, { clubId: sender.clubId }),
        body: { operations: batch.map((each) => each.operation) },
        key: newUuid(),
      },
      operationResults,
    )
    if (!sent.ok) return { taken, failure: sent.failure }
    const settled = settle(batch, sent.value.results)
    await Promise.all(settled.taken.map((id) => post.forget(id)))
    await Promise.all(settled.refused.map((each) => post.keep(each)))
    taken.push(...settled.taken)
    const moved = settled.taken.length + settled.refused.length
    if (batch.length < BATCH_MAX || moved === 0) return { taken, failure: null }
  }
}

/** Takes a refused write off the list, once its owner has read why. */
export function dismissRefused(id: string): Promise<boolean> {
  return forget('outbox', id)
}

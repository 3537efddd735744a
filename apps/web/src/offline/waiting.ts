import type { OperationResult } from '@espalier/contract/records'
import * as z from 'zod/mini'

/** A write of this phone that the server has not taken yet, with all its content; refused ones say why and stay. */
const waiting = z.strictObject({
  clubId: z.string(),
  /** Who made it: only as this member it is sent, and only to this member it is shown. */
  memberId: z.string(),
  teamId: z.string(),
  operation: z.looseObject({ op: z.string(), id: z.string(), at: z.string() }),
  refusal: z.nullable(
    z.strictObject({
      title: z.string(),
      details: z.array(z.string()),
    }),
  ),
})
export type Waiting = z.infer<typeof waiting>
export const waitingShape: z.ZodMiniType<Waiting> = waiting

/** Sent together at most; the API takes no more at once. */
export const BATCH_MAX = 200

/** One club's writes by one member. */
export type Sender = { readonly clubId: string; readonly memberId: string }

export function isFrom(each: Waiting, sender: Sender): boolean {
  return each.clubId === sender.clubId && each.memberId === sender.memberId
}

/** What goes with the next batch: the sender's own, not yet refused, oldest first (their ids rise with time). */
export function nextBatch(all: readonly Waiting[], sender: Sender): readonly Waiting[] {
  return all
    .filter((each) => isFrom(each, sender) && each.refusal === null)
    .toSorted((a, b) => (a.operation.id < b.operation.id ? -1 : 1))
    .slice(0, BATCH_MAX)
}

export type Settled = {
  /** Taken by the server, now or on an earlier try: nothing is left to do. */
  readonly taken: readonly string[]
  readonly refused: readonly Waiting[]
}

/**
 * What the answers say of what was sent. An operation without an answer of its own, or with "unknown", simply stays: it is
 * sent again with the same id, so nothing happens twice.
 */
export function settle(sent: readonly Waiting[], results: readonly OperationResult[]): Settled {
  const byId = new Map(results.map((result) => [result.id, result]))
  const taken: string[] = []
  const refused: Waiting[] = []
  for (const each of sent) {
    const result = byId.get(each.operation.id)
    if (result?.status === 'applied' || result?.status === 'replayed') taken.push(each.operation.id)
    if (result?.status === 'refused') {
      refused.push({
        ...each,
        refusal: {
          title: result.problem?.title ?? '',
          details: result.problem?.errors.map((error) => error.detail) ?? [],
        },
      })
    }
  }
  return { taken, refused }
}

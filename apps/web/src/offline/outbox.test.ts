import { expect, test } from 'vitest'
import { type Post, sendBatches } from './outbox'
import type { Waiting } from './waiting'

const ADA = { clubId: 'club', memberId: 'ada' }
const BEN = { clubId: 'club', memberId: 'ben' }

function written(id: string, by: typeof ADA): Waiting {
  const operation = { op: 'report-session', id, at: '2026-10-06T17:00:00.000Z' }
  return { ...by, teamId: 'team', operation, refusal: null }
}

/** A phone with two writers' reports, and a server that takes everything. */
function fakePost(signedIn: string | null) {
  const box = new Map([written('1', ADA), written('2', BEN)].map((each) => [each.operation.id, each]))
  const sent: string[] = []
  const post: Post = {
    findMember: async () => ({ memberId: signedIn, failure: signedIn === null ? { kind: 'unreachable' } : null }),
    list: async () => [...box.values()],
    keep: async (each) => box.set(each.operation.id, each).size > 0,
    forget: async (id) => box.delete(id),
    send: async (command) => {
      const { operations } = command.body as { readonly operations: readonly { readonly id: string }[] }
      sent.push(...operations.map(({ id }) => id))
      const results = operations.map(({ id }) => ({ id, status: 'applied', entry: null, problem: null }))
      return { ok: true, value: { results } as never }
    },
  }
  return { post, sent, box }
}

test('only the writes of the member who is signed in are sent; the other member keeps theirs', async () => {
  const { post, sent, box } = fakePost('ada')
  expect(await sendBatches(ADA, post)).toEqual({ taken: ['1'], failure: null })
  expect([sent, [...box.keys()]]).toEqual([['1'], ['2']])
})

test('nothing is sent when somebody else has signed in meanwhile, though the page still speaks for the first', async () => {
  const { post, sent, box } = fakePost('ben')
  expect(await sendBatches(ADA, post)).toEqual({ taken: [], failure: null })
  expect([sent, box.size]).toEqual([[], 2])
})

test('nothing is sent while the server cannot say who is signed in, and everything stays', async () => {
  const { post, sent, box } = fakePost(null)
  expect(await sendBatches(ADA, post)).toEqual({ taken: [], failure: { kind: 'unreachable' } })
  expect([sent, box.size]).toEqual([[], 2])
})

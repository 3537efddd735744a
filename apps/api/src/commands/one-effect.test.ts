import type { LedgerConsistency, LedgerInclusion } from '@espalier/contract/ledger'
import { paths, pathTo } from '@espalier/contract/paths'
import { sha256, verifyConsistency, verifyInclusion } from '@espalier/domain/ledger'
import { expect, test } from 'vitest'
import { testApi } from '../../../../tests/factories/api'
import { makeClub } from '../../../../tests/factories/club'
import { makeFurnishedClub, reportOf } from '../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()

async function countEntries(clubId: string, kind: string): Promise<number> {
  const text = 'select count(*)::int as count from ledger_entry where club_id = $1 and kind = $2'
  return (await asOwner<{ count: number }>(database, text, [clubId, kind]))[0]!.count
}

test('twenty equal operations at once have one effect and one entry', async () => {
  const club = await makeFurnishedClub(api)
  const [team] = club.teams
  const operation = reportOf(team, [club.stageId])
  const path = pathTo(paths.operations, { clubId: club.clubId })
  const answers = await Promise.all(
    Array.from({ length: 20 }, () => team.coach.person.send('POST', path, { operations: [operation] })),
  )
  const results = answers.map(({ json }) => json.results[0])
  expect(results.filter(({ status }) => status === 'applied')).toHaveLength(1)
  expect(results.every(({ status }) => status === 'applied' || status === 'replayed')).toBe(true)
  expect(new Set(results.map(({ entry }) => entry)).size).toBe(1)
  expect(await countEntries(club.clubId, 'session.reported')).toBe(1)
  const text = 'select count(*)::int as count from record where club_id = $1'
  expect(await asOwner(database, text, [club.clubId])).toEqual([{ count: 1 }])
})

test('two who publish one draft at once: one version, the other is told that the draft is stale', async () => {
  const club = await makeFurnishedClub(api)
  const { clubId, curriculumId } = club
  const path = pathTo(paths.draft, { clubId, curriculumId })
  const draft = await club.director.person.get(path)
  const document = { ...draft.json.document, name: 'Changed' }
  const saved = await club.director.person.send('PUT', path, { document }, { fromVersion: draft.json.version })
  const publish = () =>
    club.director.person.send(
      'POST',
      pathTo(paths.versions, { clubId, curriculumId }),
      { id: freshId() },
      { fromVersion: saved.json.version },
    )
  const answers = await Promise.all([publish(), publish()])
  expect(answers.map(({ status }) => status).sort()).toEqual([201, 412])
  const stale = answers.find(({ status }) => status === 412)!
  expect(stale.json).toMatchObject({ code: 'version-is-stale', current: { version: saved.json.version + 1 } })
  expect(await countEntries(clubId, 'version.published')).toBe(2)
  const text = 'select number, offered from curriculum_version where club_id = $1 order by number'
  expect(await asOwner(database, text, [clubId])).toEqual([
    { number: 1, offered: false },
    { number: 2, offered: true },
  ])
})

test('sixteen writers of one club leave a record book without gaps that proves itself', async () => {
  const club = await makeClub(api)
  const { clubId } = club
  const path = pathTo(paths.seasons, { clubId })
  const write = async (writer: number) => {
    for (let at = 0; at < 5; at += 1) {
      const body = { id: freshId(), name: `Season ${writer}-${at}`, firstDay: '2026-09-01', lastDay: '2026-12-20' }
      const answer = await club.administrator.send('POST', path, body)
      expect(answer.status).toBe(201)
    }
  }
  const before = (await club.administrator.get(pathTo(paths.ledgerHead, { clubId }))).json
  await Promise.all(Array.from({ length: 16 }, (_, writer) => write(writer)))
  const text = 'select seq::int as seq, entry_id from ledger_entry where club_id = $1 order by seq'
  const entries = await asOwner<{ seq: number; entry_id: string }>(database, text, [clubId])
  expect(entries.map(({ seq }) => seq)).toEqual(entries.map((_, place) => place))
  expect(entries).toHaveLength(before.size + 80)
  await proveBook(
    club,
    entries.map(({ entry_id }) => entry_id),
    before,
  )
}, 60_000)

async function proveBook(
  club: Awaited<ReturnType<typeof makeClub>>,
  entryIds: readonly string[],
  before: { readonly size: number; readonly root: string },
): Promise<void> {
  const { clubId, administrator } = club
  const head = (await administrator.get(pathTo(paths.ledgerHead, { clubId }))).json
  for (const entryId of entryIds.filter((_, at) => at % 7 === 0)) {
    const proof = (await administrator.get(pathTo(paths.ledgerInclusion, { clubId, entryId }))).json
    expect(proof.root).toBe(head.root)
    expect(isIncluded(proof)).toBe(true)
    expect(isIncluded({ ...proof, index: proof.index + 1 })).toBe(false)
  }
  const query = { from: String(before.size), to: String(head.size) }
  const consistency = (await administrator.get(pathTo(paths.ledgerConsistency, { clubId }, query))).json
  expect(consistency).toMatchObject({ fromRoot: before.root, toRoot: head.root })
  expect(isConsistent(consistency)).toBe(true)
  expect(isConsistent({ ...consistency, fromRoot: head.root })).toBe(false)
}

const bytes = (hex: string) => new Uint8Array(Buffer.from(hex, 'hex'))

function isIncluded({ entry, index, size, root, path }: LedgerInclusion): boolean {
  const leafHash = bytes(entry.leafHash)
  return verifyInclusion(sha256, { leafHash, index, size, root: bytes(root), proof: path.map(bytes) })
}

function isConsistent({ from, to, fromRoot, toRoot, path }: LedgerConsistency): boolean {
  return verifyConsistency(sha256, {
    oldSize: from,
    oldRoot: bytes(fromRoot),
    newSize: to,
    newRoot: bytes(toRoot),
    proof: path.map(bytes),
  })
}

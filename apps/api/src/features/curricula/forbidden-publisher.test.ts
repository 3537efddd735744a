import { paths, pathTo } from '@espalier/contract/paths'
import { beforeEach, expect, test, vi } from 'vitest'
import { testApi } from '../../../../../tests/factories/api'
import { makeFurnishedClub } from '../../../../../tests/factories/furnished-club'
import { freshId } from '../../../../../tests/support/database'
import { listToFix } from '../patterns/pattern-notes'

// The check itself, counted.
vi.mock(import('../patterns/pattern-notes'), async (load) => {
  const real = await load()
  return { ...real, listToFix: vi.fn(real.listToFix) }
})

const api = await testApi()
const club = await makeFurnishedClub(api)
const { clubId, curriculumId } = club
const publish = (person: typeof club.administrator, id: string, fromVersion: number) =>
  person.send('POST', pathTo(paths.versions, { clubId, curriculumId: id }), { id: freshId() }, { fromVersion })

beforeEach(() => {
  vi.mocked(listToFix).mockClear()
})

test('whoever may not publish is answered without a check, and who may see no draft does not learn whether there is one', async () => {
  const [{ coach, assistant }] = club.teams
  for (const { person } of [coach, assistant, club.auditor]) {
    const there = await publish(person, curriculumId, 2)
    const missing = await publish(person, freshId(), 2)
    expect(missing.status).toBe(404)
    if (person === club.auditor.person) expect(there.status).toBe(403)
    else expect({ ...there.json, instance: '' }).toEqual({ ...missing.json, instance: '' })
  }
  expect(vi.mocked(listToFix)).not.toHaveBeenCalled()
})

test('a stale or missing curriculum costs the director no check either; control: a publication does check', async () => {
  expect((await publish(club.director.person, curriculumId, 99)).status).toBe(412)
  expect((await publish(club.director.person, freshId(), 1)).status).toBe(404)
  expect(vi.mocked(listToFix)).not.toHaveBeenCalled()
  await publish(club.director.person, curriculumId, 2)
  expect(vi.mocked(listToFix)).toHaveBeenCalledTimes(1)
})

test('a list of patterns checks each version once, however often it is read, and a new version once more', async () => {
  const list = pathTo(paths.patterns, { clubId })
  const first = await club.auditor.person.get(list)
  expect(first.status).toBe(200)
  expect(vi.mocked(listToFix)).toHaveBeenCalledTimes(first.json.patterns.length)
  vi.mocked(listToFix).mockClear()
  expect((await club.director.person.get(list)).json).toEqual(first.json)
  expect(vi.mocked(listToFix)).not.toHaveBeenCalled()
  const path = pathTo(paths.pattern, { clubId, patternId: club.patternId })
  const { document } = (await club.director.person.get(path)).json
  await club.director.person.send('PUT', path, { document: { ...document, title: 'New' } }, { fromVersion: 1 })
  expect((await club.director.person.get(list)).status).toBe(200)
  expect(vi.mocked(listToFix)).toHaveBeenCalledTimes(1)
})

import { createHash } from 'node:crypto'
import { paths, pathTo } from '@espalier/contract/paths'
import type { DraftDocument } from '@espalier/domain/curriculum'
import { canonicalJson } from '@espalier/domain/ledger'
import type { PatternDocument } from '@espalier/domain/pattern'
import { describe, expect, test } from 'vitest'
import { roundTheBack, wallOnTheRight } from '../../../../../prisma/demo/patterns'
import { testApi } from '../../../../../tests/factories/api'
import { addMember, addSeason, addTeam, makeClub } from '../../../../../tests/factories/club'
import {
  addPattern,
  makeDraft,
  publishCurriculum,
  spaceOf,
  TUESDAYS,
} from '../../../../../tests/factories/furnished-club'
import { asOwner, freshId, testDatabase } from '../../../../../tests/support/database'

const api = await testApi()
const database = await testDatabase()

async function clubWithDirector() {
  const club = await makeClub(api)
  const director = await addMember(club, [{ role: 'director', teamId: null }], 'Dita Director')
  return { ...club, director }
}

const shuffled = (document: PatternDocument, changed: Partial<PatternDocument>): PatternDocument => ({
  ...document,
  ...changed,
})

describe('a pattern', () => {
  const twice = [...roundTheBack.positions.slice(0, 6), roundTheBack.positions[1]!]
  const firstStep = roundTheBack.steps[0]!
  const cases: readonly (readonly [string, PatternDocument, string, string])[] = [
    [
      'whose formation does not add up',
      shuffled(roundTheBack, { formation: '3-3-1' }),
      'formation-count',
      '/document/formation',
    ],
    [
      'with a position twice',
      shuffled(roundTheBack, { positions: twice }),
      'position-twice',
      '/document/positions/6/position',
    ],
    [
      'passed by someone without the ball',
      shuffled(roundTheBack, {
        steps: [firstStep, { ...roundTheBack.steps[1]!, action: { kind: 'dummy', by: 'ST', to: 'RW' } }],
        looks: [],
      }),
      'passer-without-ball',
      '/document/steps/1/action/by',
    ],
    [
      'with a point of seven words',
      shuffled(roundTheBack, { steps: [{ ...firstStep, point: 'one two three four five six seven' }], looks: [] }),
      'point-too-long',
      '/document/steps/0/point',
    ],
  ]
  test.each(cases)('%s is refused where it stands, and nothing is saved', async (_, document, code, pointer) => {
    const { clubId, director } = await clubWithDirector()
    const answer = await director.person.send('POST', pathTo(paths.patterns, { clubId }), { id: freshId(), document })
    expect(answer.json).toMatchObject({ status: 400, code })
    expect(answer.json.errors.map((error: { pointer: string }) => error.pointer)).toContain(pointer)
    expect((await director.person.get(pathTo(paths.patterns, { clubId }))).json.patterns).toEqual([])
  })

  test.each([
    ['metres where millimetres are due', { lengthMm: 27.4 }, '/space/lengthMm'],
    ['a side beyond any field', { widthMm: 200_000 }, '/space/widthMm'],
  ])('a space with %s is refused', async (_, changed, pointer) => {
    const { clubId, director } = await clubWithDirector()
    const body = { id: freshId(), space: { ...spaceOf('x'), ...changed } }
    const answer = await director.person.send('POST', pathTo(paths.spaces, { clubId }), body)
    expect(answer.json).toMatchObject({ status: 400, errors: [{ pointer }] })
  })

  test('is saved as a new version, keeps the old one, and shows a stale writer the one that stands', async () => {
    const { clubId, director, ...club } = await clubWithDirector()
    const patternId = await addPattern({ clubId, ...club }, director, wallOnTheRight)
    const path = pathTo(paths.pattern, { clubId, patternId })
    const opened = await director.person.get(path)
    expect(opened.json.document).toEqual(wallOnTheRight)
    expect(opened.headers.etag).toBe('"1"')
    const document = { ...wallOnTheRight, title: 'Renamed' }
    const saved = await Promise.all([
      director.person.send('PUT', path, { document }, { fromVersion: 1 }),
      director.person.send('PUT', path, { document: { ...document, title: 'Other' } }, { fromVersion: 1 }),
    ])
    expect(saved.map(({ status }) => status).sort()).toEqual([200, 412])
    expect(saved.find(({ status }) => status === 412)!.json.current.version).toBe(2)
    const rows = await asOwner(database, 'select version from pattern_version where pattern_id = $1 order by 1', [
      patternId,
    ])
    expect(rows).toEqual([{ version: 1 }, { version: 2 }])
  })
})

async function publish(club: Awaited<ReturnType<typeof clubWithDirector>>, document: DraftDocument) {
  const { clubId, director } = club
  const curriculumId = freshId()
  const created = await director.person.send('POST', pathTo(paths.curricula, { clubId }), {
    id: curriculumId,
    document,
  })
  expect(created.status).toBe(201)
  const path = pathTo(paths.versions, { clubId, curriculumId })
  return { curriculumId, answer: await director.person.send('POST', path, { id: freshId() }, { fromVersion: 1 }) }
}

describe('publishing', () => {
  test('freezes the content: canonical text, its hash in the record book, the number, and nothing to change it', async () => {
    const club = await clubWithDirector()
    const { clubId, director } = club
    const draft = makeDraft(await addPattern(club, director, wallOnTheRight), 'C')
    const { curriculumId, answer } = await publish(club, draft)
    expect(answer.json).toMatchObject({ id: curriculumId, version: 1 })
    const version = (await director.person.get(pathTo(paths.version, { clubId, curriculumId, number: 1 }))).json
    expect(version.summary).toMatchObject({
      number: 1,
      offered: true,
      signature: 'pending',
      publishedBy: 'Dita Director',
    })
    expect(version.canonical).toBe(canonicalJson(version.content))
    expect(createHash('sha256').update(version.canonical).digest('hex')).toBe(version.summary.contentHash)
    expect(version.content.patterns[0].document).toEqual(wallOnTheRight)
    const entry = (
      await director.person.get(pathTo(paths.ledgerEntries, { clubId }, { subjectId: curriculumId }))
    ).json.entries.find(({ kind }: { kind: string }) => kind === 'version.published')
    expect(JSON.parse(entry.body).facts.contentHash).toBe(version.summary.contentHash)
    expect(entry.entryId).toBe(answer.json.entry)

    const asApp = `set role espalier_app; set app.club_id = '${clubId}';`
    await expect(asOwner(database, `${asApp} update curriculum_version set content = '{}'`)).rejects.toThrow(/denied/)
    await expect(asOwner(database, `${asApp} delete from curriculum_version`)).rejects.toThrow(/denied/)
  })

  test('a later version leaves the older as it was and takes over the offer; the pattern frozen before stays frozen', async () => {
    const club = await clubWithDirector()
    const { clubId, director } = club
    const patternId = await addPattern(club, director, wallOnTheRight)
    const { curriculumId } = await publish(club, makeDraft(patternId, 'C'))
    const first = await director.person.get(pathTo(paths.version, { clubId, curriculumId, number: 1 }))
    const renamed = { document: { ...wallOnTheRight, title: 'Later' } }
    await director.person.send('PUT', pathTo(paths.pattern, { clubId, patternId }), renamed, { fromVersion: 1 })
    const path = pathTo(paths.versions, { clubId, curriculumId })
    const second = await director.person.send('POST', path, { id: freshId() }, { fromVersion: 2 })
    expect(second.json.version).toBe(2)
    const again = await director.person.get(pathTo(paths.version, { clubId, curriculumId, number: 1 }))
    expect(again.json.canonical).toBe(first.json.canonical)
    expect(again.json.summary.offered).toBe(false)
    const third = await director.person.send('POST', path, { id: freshId() }, { fromVersion: 3 })
    expect(third.json).toMatchObject({ status: 422, code: 'nothing-changed' })
  })

  test('refuses an empty draft, one without a model session, unknown patterns, ids that stand twice and unknown names', async () => {
    const club = await clubWithDirector()
    const draft = makeDraft(await addPattern(club, club.director, wallOnTheRight), 'C')
    const [progression] = draft.progressions
    const [first, second, third] = progression!.stages
    const withStages = (stages: readonly unknown[]) =>
      ({ ...draft, progressions: [{ ...progression!, stages }] }) as unknown as DraftDocument
    const codeOf = async (document: DraftDocument) => (await publish(club, document)).answer.json
    expect(await codeOf({ ...draft, progressions: [] })).toMatchObject({ status: 422, code: 'draft-empty' })
    expect(await codeOf({ ...draft, modelSessions: [] })).toMatchObject({
      status: 422,
      code: 'draft-has-no-model-session',
    })
    expect(await codeOf(withStages([first, { ...second, patternId: freshId() }]))).toMatchObject({
      status: 422,
      code: 'pattern-unknown',
      errors: [{ pointer: '/progressions/0/stages/1/patternId' }],
    })
    expect(await codeOf(withStages([first, { ...third, stageId: first!.stageId }]))).toMatchObject({
      status: 400,
      code: 'identifier-twice',
      errors: [{ pointer: '/progressions/0/stages/1/stageId' }],
    })
    const waiting = { ...draft, progressions: [{ ...progression!, after: [progression!.progressionId] }] }
    expect(await codeOf(waiting)).toMatchObject({
      code: 'reference-unknown',
      errors: [{ pointer: '/progressions/0/after/0' }],
    })
  })

  test('refuses notes to fix and missing teaching by the name of the pattern', async () => {
    const club = await clubWithDirector()
    const far = { landmark: 'corner-left', upMm: -9_000, rightMm: -9_000 } as const
    const outside = {
      ...wallOnTheRight,
      title: 'Off the field',
      positions: wallOnTheRight.positions.map((placed) =>
        placed.position === 'LW' ? { ...placed, spot: far } : placed,
      ),
    }
    const broken = await publish(
      club,
      makeDraft(await addPattern(club, club.director, outside as PatternDocument), 'C'),
    )
    expect(broken.answer.json).toMatchObject({ status: 422, code: 'draft-has-notes-to-fix' })
    expect(broken.answer.json.errors[0]).toMatchObject({ pointer: '/progressions/0/stages/0' })
    expect(broken.answer.json.errors[0].detail).toContain('“Off the field”')

    const silent = { ...wallOnTheRight, title: 'Says nothing', teaching: { ...wallOnTheRight.teaching, why: '' } }
    const untaught = await publish(club, makeDraft(await addPattern(club, club.director, silent), 'C'))
    expect(untaught.answer.json).toMatchObject({ status: 422, code: 'teaching-missing' })
    expect(untaught.answer.json.errors[0].detail).toContain('“Says nothing”')

    // Whatever else is in the way is said in the same answer, each with its own code.
    const both = { ...outside, title: 'Wanting', teaching: silent.teaching }
    const wanting = await addPattern(club, club.director, both as PatternDocument)
    const bare = await publish(club, { ...makeDraft(wanting, 'C'), modelSessions: [] })
    expect(bare.answer.json).toMatchObject({ status: 422, code: 'draft-has-no-model-session' })
    const codes = bare.answer.json.errors.map(({ code }: { code: string }) => code)
    expect([...new Set(codes)]).toEqual(['draft-has-no-model-session', 'teaching-missing', 'draft-has-notes-to-fix'])
    const versions = await asOwner(database, 'select 1 from curriculum_version where club_id = $1', [club.clubId])
    expect(versions).toEqual([])
  })

  test('a stage belongs to one curriculum for ever', async () => {
    const club = await clubWithDirector()
    const draft = makeDraft(await addPattern(club, club.director, wallOnTheRight), 'C')
    expect((await publish(club, draft)).answer.status).toBe(201)
    const { answer } = await publish(club, { ...draft, name: 'Copy' })
    expect(answer.json).toMatchObject({ status: 400, code: 'identifier-twice' })
  })

  test('coaches see what is published and nothing of a draft', async () => {
    const club = await clubWithDirector()
    const { clubId } = club
    const teamId = await addTeam(club, await addSeason(club))
    const coach = await addMember(club, [{ role: 'coach', teamId }])
    const draft = makeDraft(await addPattern(club, club.director, wallOnTheRight), 'C')
    const hidden = freshId()
    await club.director.person.send('POST', pathTo(paths.curricula, { clubId }), { id: hidden, document: draft })
    const { curriculumId } = await publish(club, { ...makeDraft(draft.progressions[0]!.stages[0]!.patternId, 'P') })
    const list = (await coach.person.get(pathTo(paths.curricula, { clubId }))).json.curricula
    expect(list).toMatchObject([{ curriculumId, draftVersion: null, stages: 3 }])
    for (const path of [
      pathTo(paths.curriculum, { clubId, curriculumId: hidden }),
      pathTo(paths.draft, { clubId, curriculumId }),
      pathTo(paths.patterns, { clubId }),
    ])
      expect((await coach.person.get(path)).status).toBe(404)
  })
})

describe('adopting', () => {
  test('plans three separate dates a stage in order, keeps what has begun, and re-plans the rest', async () => {
    const club = await clubWithDirector()
    const { clubId, director, administrator } = club
    const seasonId = await addSeason(club)
    const teamId = await addTeam(club, seasonId)
    const coach = await addMember(club, [{ role: 'coach', teamId }])
    await administrator.send('POST', pathTo(paths.slots, { clubId, teamId }), {
      id: freshId(),
      spaceId: null,
      ...TUESDAYS,
    })
    const draft = makeDraft(await addPattern(club, director, wallOnTheRight), 'C')
    const curriculumId = await publishCurriculum(club, director, draft)
    const path = pathTo(paths.adoptions, { clubId, teamId })
    const adopt = (changed: object) =>
      coach.person.send('POST', path, { id: freshId(), curriculumId, number: 1, fromDate: '2026-09-15', ...changed })
    expect((await adopt({ number: 2 })).json.code).toBe('version-not-offered')
    expect((await adopt({ curriculumId: freshId() })).json.code).toBe('version-not-offered')
    expect((await adopt({ fromDate: '2026-02-30' })).json.errors).toMatchObject([{ pointer: '/fromDate' }])
    // Today is the 15th in London. A coach adopts from today on; a director also sets right what was.
    expect((await adopt({ fromDate: '2026-09-14' })).json).toMatchObject({
      status: 400,
      errors: [{ pointer: '/fromDate' }],
    })
    expect((await adopt({})).status).toBe(201)
    expect((await adopt({})).json.code).toBe('nothing-changed')

    const planned = () =>
      asOwner<{ local_date: string; stage: number; first: boolean; closed: boolean }>(
        database,
        `select d.local_date::text as local_date, v.ordinal::int as stage, p.first, p.closed_at is not null as closed
         from stage_planned p join training_date d using (club_id, date_id)
         join version_stage v on v.club_id = p.club_id and v.stage_id = p.stage_id and v.number = 1
         where p.club_id = $1 order by d.local_date, p.closed_at nulls last`,
        [clubId],
      )
    // The clock stands at 18:00 on Tuesday 15 September: that evening has begun, so the first planned one is the 22nd.
    const first = await planned()
    expect(first.slice(0, 7).map(({ local_date, stage }) => [local_date, stage])).toEqual([
      ['2026-09-22', 0],
      ['2026-09-29', 0],
      ['2026-10-06', 0],
      ['2026-10-13', 1],
      ['2026-10-20', 1],
      ['2026-10-27', 1],
      ['2026-11-03', 2],
    ])
    expect(first.every((row) => row.first && !row.closed)).toBe(true)

    // A second slot in the middle of the season: stages come sooner, what changes is closed, nothing is deleted.
    const thursdays = {
      id: freshId(),
      spaceId: null,
      ...TUESDAYS,
      weekday: 4,
      validFrom: '2026-10-01',
      validTo: '2026-10-20',
    }
    await administrator.send('POST', pathTo(paths.slots, { clubId, teamId }), thursdays)
    const second = await planned()
    const open = second.filter(({ closed }) => !closed)
    expect(open.slice(0, 4).map(({ local_date, stage }) => [local_date, stage])).toEqual([
      ['2026-09-22', 0],
      ['2026-09-29', 0],
      ['2026-10-01', 0],
      ['2026-10-06', 1],
    ])
    expect(second.filter(({ closed }) => closed).every((row) => row.first)).toBe(true)
    expect(second.length).toBeGreaterThan(first.length + 3)
  })

  test('a coach adopts only where the club lets coaches adopt', async () => {
    const club = await clubWithDirector()
    const { clubId, director } = club
    const teamId = await addTeam(club, await addSeason(club))
    const coach = await addMember(club, [{ role: 'coach', teamId }])
    const draft = makeDraft(await addPattern(club, director, wallOnTheRight), 'C')
    const curriculumId = await publishCurriculum(club, director, draft)
    await asOwner(database, `update club set settings = settings || '{"coachesAdopt":false}' where club_id = $1`, [
      clubId,
    ])
    const adoption = { id: freshId(), curriculumId, number: 1, fromDate: '2026-09-01' }
    const path = pathTo(paths.adoptions, { clubId, teamId })
    expect((await coach.person.send('POST', path, adoption)).json).toMatchObject({ status: 403, code: 'not-allowed' })
    expect((await director.person.send('POST', path, adoption)).status).toBe(201)
  })
})

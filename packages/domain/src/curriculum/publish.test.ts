import { describe, expect, test } from 'vitest'
import { wallOnTheRight } from '../../../../prisma/demo/patterns'
import { minutes } from '../quantities'
import { decideAdopt } from './adopt'
import { listDifferences } from './difference'
import type { ClubSettings, DraftDocument, Stage } from './draft'
import { listDraftFaults } from './draft-faults'
import { type CheckedPattern, decidePublish, listPublishFaults, type Publication } from './publish'

const stage = (stageId: string, changed: Partial<Stage> = {}): Stage => ({
  stageId,
  title: `Stage ${stageId}`,
  patternId: 'p',
  form: { kind: 'full' },
  pressure: 'none',
  conditions: [],
  ...changed,
})
const draft: DraftDocument = {
  v: 1,
  name: 'Curriculum',
  ageGroup: 'U10',
  formatId: 'us-7v7',
  progressions: [{ progressionId: 'g', title: 'G', stages: [stage('a'), stage('b')], after: [] }],
  modelSessions: [
    {
      modelSessionId: 'm',
      title: 'M',
      activities: [
        {
          activityId: 'x',
          kind: 'pattern',
          title: 'X',
          minutes: minutes(20),
          stageId: 'a',
          conditions: [],
          points: [],
        },
      ],
    },
  ],
}
const settings: ClubSettings = {
  v: 1,
  crossingAtRelease: 'when-released',
  penaltyMarkYards7v7: 8,
  coachesAdopt: true,
  adultsRequired: 2,
  welfareOfficer: '',
}
const pattern: CheckedPattern = { patternId: 'p', version: 3, document: wallOnTheRight, toFix: [], missing: [] }

function publish(changed: Partial<Publication> = {}) {
  return decidePublish({
    curriculumId: 'c',
    number: 1,
    draft,
    patterns: [pattern],
    settings,
    checkVersion: '1',
    latest: null,
    ...changed,
  })
}

describe('publishing', () => {
  test('freezes each used pattern once, with its version, the settings and the version of the check', () => {
    const unused = { ...pattern, patternId: 'unused' }
    expect(publish({ patterns: [pattern, unused] })).toMatchObject({
      ok: true,
      value: { number: 1, checkVersion: '1', settings, patterns: [{ patternId: 'p', version: 3 }] },
    })
  })

  test('names what to fix by pattern and first stage', () => {
    const bad = { ...pattern, toFix: ['RW is late.'] }
    expect(publish({ patterns: [bad] })).toEqual({
      ok: false,
      refusal: {
        code: 'draft-has-notes-to-fix',
        errors: [
          {
            code: 'draft-has-notes-to-fix',
            pointer: '/progressions/0/stages/0',
            detail: `“${wallOnTheRight.title}”: RW is late.`,
          },
        ],
      },
    })
  })

  test('names everything at once, each with its own code, what the draft lacks first', () => {
    const bad = {
      ...pattern,
      toFix: ['RW is late.'],
      missing: [{ pointer: '/teaching/why', detail: 'why is missing' }],
    }
    const [progression] = draft.progressions
    const wanting: DraftDocument = {
      ...draft,
      progressions: [
        { ...progression!, stages: [stage('a'), stage('a'), stage('b', { patternId: 'gone' })] },
        { progressionId: 'h', title: 'H', stages: [], after: [] },
      ],
      modelSessions: [],
    }
    const decided = publish({ draft: wanting, patterns: [bad] })
    if (decided.ok || decided.refusal.code === 'nothing-changed') throw new Error('this draft has faults')
    expect(decided.refusal.code).toBe('draft-empty')
    expect(decided.refusal.errors.map(({ code, pointer }) => `${code} ${pointer}`)).toEqual([
      'draft-empty /progressions/1/stages',
      'draft-has-no-model-session /modelSessions',
      'identifier-twice /progressions/0/stages/1/stageId',
      'pattern-unknown /progressions/0/stages/2/patternId',
      'teaching-missing /progressions/0/stages/0',
      'draft-has-notes-to-fix /progressions/0/stages/0',
    ])
  })

  test('says of a draft without any stage only that', () => {
    const empty = { ...draft, progressions: [{ ...draft.progressions[0]!, stages: [] }], modelSessions: [] }
    expect(listPublishFaults(empty, []).map(({ code }) => code)).toEqual(['draft-empty', 'draft-has-no-model-session'])
  })

  test('says nothing new in one number and something new in another name', () => {
    const first = publish()
    if (!first.ok) throw new Error('the draft is good')
    expect(publish({ number: 2, latest: first.value })).toMatchObject({
      ok: false,
      refusal: { code: 'nothing-changed' },
    })
    // Key order is no difference: the latest comes back from canonical text, sorted.
    const sorted = JSON.parse(JSON.stringify(first.value, Object.keys(first.value).sort()))
    expect(sorted.name).toBe(first.value.name)
    expect(publish({ number: 2, latest: first.value, draft: { ...draft, name: 'Other' } })).toMatchObject({ ok: true })
    expect(publish({ number: 2, latest: first.value, patterns: [{ ...pattern, version: 4 }] })).toMatchObject({
      ok: true,
    })
  })
})

describe('a draft', () => {
  const progression = (progressionId: string, after: readonly string[]) => ({
    progressionId,
    title: progressionId,
    stages: [],
    after,
  })
  const pointersOf = (changed: Partial<DraftDocument>) =>
    listDraftFaults({ ...draft, ...changed }).map(({ pointer }) => pointer)

  test('may name progressions in any order, but none may wait for itself by whatever way round', () => {
    const open = [progression('a', ['b']), progression('b', [])]
    expect(pointersOf({ progressions: open, modelSessions: [] })).toEqual([])
    const circle = [progression('a', ['b']), progression('b', ['c']), progression('c', ['a'])]
    expect(pointersOf({ progressions: circle, modelSessions: [] })).toEqual([
      '/progressions/0/after/0',
      '/progressions/1/after/0',
      '/progressions/2/after/0',
    ])
    const unknown = [progression('a', ['z'])]
    expect(pointersOf({ progressions: unknown, modelSessions: [] })).toEqual(['/progressions/0/after/0'])
  })

  test('names stages that it has', () => {
    expect(pointersOf({ progressions: [] })).toEqual(['/modelSessions/0/activities/0/stageId'])
  })
})

test('differences are said stage by stage: added, removed and what changed of one', () => {
  const first = publish()
  const changedStages = [stage('a', { pressure: 'poles', title: 'New' }), stage('z')]
  const changed = {
    ...draft,
    modelSessions: draft.modelSessions,
    progressions: [{ ...draft.progressions[0]!, stages: changedStages }],
  }
  const second = publish({ draft: changed, number: 2, patterns: [{ ...pattern, version: 4 }] })
  if (!first.ok || !second.ok) throw new Error('both drafts are good')
  const said = listDifferences(first.value, second.value).map(({ stageId, change }) => `${stageId} ${change}`)
  expect(said).toEqual(['a title', 'a pattern', 'a pressure', 'z added', 'b removed'])
  expect(listDifferences(null, first.value).every(({ change }) => change === 'added')).toBe(true)
  expect(listDifferences(first.value, first.value)).toEqual([])
})

describe('adopting', () => {
  const wish = {
    version: { offered: true },
    following: null,
    wished: { curriculumId: 'c', number: 2 },
    byDirector: false,
    coachesAdopt: true,
  }
  test.each([
    ['is allowed to a coach where the club lets coaches', {}, null],
    ['is the director’s where it does not', { coachesAdopt: false }, 'not-allowed'],
    ['is always allowed to the director', { coachesAdopt: false, byDirector: true }, null],
    ['needs a version', { version: null }, 'version-not-offered'],
    ['needs an offered one', { version: { offered: false } }, 'version-not-offered'],
    ['changes something', { following: { curriculumId: 'c', number: 2 } }, 'nothing-changed'],
    ['may move to another number', { following: { curriculumId: 'c', number: 1 } }, null],
  ])('%s', (_, changed, code) => {
    const decided = decideAdopt({ ...wish, ...changed })
    expect(decided.ok ? null : decided.refusal.code).toBe(code)
  })
})

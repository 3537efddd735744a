import type { PatternSummary } from '@espalier/contract/patterns'
import type { Problem } from '@espalier/contract/problems'
import type { DraftDocument, VersionContent } from '@espalier/domain/curriculum'
import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import { PublishRefusal } from './publish-press'
import { faultGroups } from './publish-refusal'
import { differenceSentences, publishSentences } from './publish-words'

const patternId = '00000000-0000-7000-8000-000000000090'
const clubId = '00000000-0000-7000-8000-000000000001'
const draft: DraftDocument = {
  v: 1,
  name: 'Out from the back',
  ageGroup: 'U10',
  formatId: 'us-7v7',
  progressions: [
    {
      progressionId: '00000000-0000-7000-8000-000000000002',
      title: 'Right',
      after: [],
      stages: [
        {
          stageId: '00000000-0000-7000-8000-000000000003',
          title: 'Names',
          patternId,
          form: { kind: 'full' },
          pressure: 'none',
          conditions: [],
        },
      ],
    },
  ],
  modelSessions: [],
}
const patterns: readonly PatternSummary[] = [
  {
    patternId,
    version: 2,
    title: 'Third man',
    problem: 'They press with two',
    formatId: 'us-7v7',
    formation: '2-3-1',
    ageGroup: 'U10',
    steps: 5,
    toFix: 1,
  },
]

test('the confirmation says what will be frozen, in words', () => {
  expect(publishSentences({ draft, patterns, latest: null })).toEqual([
    'Version 1 of “Out from the back” will hold 1 progression with 1 stage, 0 model sessions and 1 pattern.',
    'Frozen as they stand now: “Third man”.',
  ])
})

test('against the version before it says what teams would notice', () => {
  const latest = {
    ...draft,
    number: 3,
    patterns: [{ patternId, version: 1 }],
    progressions: draft.progressions.map((progression) => ({
      ...progression,
      stages: progression.stages.map((stage) => ({ ...stage, pressure: 'poles' as const })),
    })),
  } as unknown as VersionContent
  expect(differenceSentences({ draft, patterns, latest })).toEqual([
    '“Names”: the pattern is changed.',
    '“Names”: another pressure.',
  ])
  expect(publishSentences({ draft, patterns, latest })[0]).toContain('Version 4')
})

const problem: Problem = {
  type: 'about:blank',
  title: 'These notes must be fixed before publishing',
  status: 422,
  instance: 'request',
  code: 'draft-has-notes-to-fix',
  errors: [
    {
      code: 'draft-has-no-model-session',
      pointer: '/modelSessions',
      detail: 'The curriculum has no model session yet.',
    },
    {
      code: 'draft-has-notes-to-fix',
      pointer: '/progressions/0/stages/0',
      detail: '“Third man”: RW is off the space.',
    },
  ],
}

test('a refusal leads to the patterns it speaks of, and says what is wanting in the draft', () => {
  expect(faultGroups(problem.errors ?? [], draft)).toEqual([
    { patternId: null, details: ['The curriculum has no model session yet.'] },
    { patternId, details: ['“Third man”: RW is off the space.'] },
  ])
  const gone = { code: 'pattern-unknown', pointer: '/progressions/0/stages/0/patternId', detail: 'gone' }
  expect(faultGroups([gone], draft)[0]?.patternId).toBeNull()
  const html = renderToStaticMarkup(
    <PublishRefusal clubId={clubId} draft={draft} failure={{ kind: 'problem', problem }} />,
  )
  expect(html).toContain('role="alert"')
  expect(html).toContain('RW is off the space.')
  expect(html).toContain(`href="/clubs/${clubId}/patterns/${patternId}"`)
})

test('without a failure nothing is said', () => {
  expect(renderToStaticMarkup(<PublishRefusal clubId={clubId} draft={draft} failure={null} />)).toBe('')
})

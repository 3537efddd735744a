import type { DraftDocument } from '@espalier/domain/curriculum'
import { minutes } from '@espalier/domain/quantities'
import { expect, test } from 'vitest'
import { changeDraft, type DraftChange } from './edit-draft'
import { listWrongs, tidyDraft, unfinishedDraft } from './tidy-draft'

const id = (number: number) => `00000000-0000-7000-8000-${String(number).padStart(12, '0')}`
const pattern = { patternId: id(90), title: 'Third man' }
const empty: DraftDocument = {
  v: 1,
  name: 'Out from the back',
  ageGroup: 'U10',
  formatId: 'us-7v7',
  progressions: [],
  modelSessions: [],
}
const change = (draft: DraftDocument, ...changes: readonly DraftChange[]) => changes.reduce(changeDraft, draft)
const written = change(
  empty,
  { kind: 'add-progression', id: id(1) },
  { kind: 'add-stage', progression: 0, id: id(2), pattern },
  { kind: 'add-stage', progression: 0, id: id(3), pattern },
  { kind: 'add-progression', id: id(4) },
  { kind: 'comes-after', at: 1, id: id(1), after: true },
  { kind: 'add-session', id: id(5) },
  { kind: 'add-activity', session: 0, id: id(6) },
  { kind: 'add-activity', session: 0, id: id(7) },
)

test('the first stage takes its pattern’s name, the next one goes on with the same pattern', () => {
  const [first, second] = written.progressions[0]?.stages ?? []
  expect(first).toMatchObject({ title: 'Third man', patternId: pattern.patternId, pressure: 'none' })
  expect(second).toMatchObject({ title: '', patternId: pattern.patternId, stageId: id(3) })
})

test('a stage without a title cannot be saved and says which one it is', () => {
  expect(listWrongs(tidyDraft(written))).toEqual([
    expect.objectContaining({ detail: 'Stage 2 of “Progression 1” has no title yet.' }),
  ])
})

test('the second activity is the pattern, by the team’s own progress', () => {
  const kinds = written.modelSessions[0]?.activities.map((activity) => [activity.kind, activity.stageId])
  expect(kinds).toEqual([
    ['small-sided-game', null],
    ['pattern', null],
  ])
})

test('a stage that is gone is trained by no activity any more', () => {
  const activity = written.modelSessions[0]?.activities[1]
  const named = change(written, {
    kind: 'activity',
    session: 0,
    at: 1,
    activity: { ...activity!, stageId: id(2) },
  })
  expect(named.modelSessions[0]?.activities[1]?.stageId).toBe(id(2))
  const without = change(named, { kind: 'remove-stage', progression: 0, at: 0 })
  expect(without.modelSessions[0]?.activities[1]?.stageId).toBeNull()
  const withoutAll = change(named, { kind: 'remove-progression', at: 0 })
  expect(withoutAll.modelSessions[0]?.activities[1]?.stageId).toBeNull()
})

test('a progression that is gone is waited for by none', () => {
  expect(written.progressions[1]?.after).toEqual([id(1)])
  expect(change(written, { kind: 'remove-progression', at: 0 }).progressions[0]?.after).toEqual([])
})

test('moving a stage keeps its id and its content', () => {
  const moved = change(written, { kind: 'move-stage', progression: 0, at: 1, by: -1 })
  expect(moved.progressions[0]?.stages.map(({ stageId }) => stageId)).toEqual([id(3), id(2)])
  expect(change(moved, { kind: 'move-stage', progression: 0, at: 0, by: 1 })).toEqual(written)
})

test('a change of what is not there changes nothing', () => {
  expect(change(empty, { kind: 'remove-stage', progression: 3, at: 0 })).toBe(empty)
  expect(change(empty, { kind: 'session', at: 2, title: 'x' })).toBe(empty)
})

test('a coaching point of seven words is refused with its words', () => {
  const activity = written.modelSessions[0]?.activities[0]
  const long = change(written, {
    kind: 'activity',
    session: 0,
    at: 0,
    activity: { ...activity!, minutes: minutes(20), points: ['one two three four five six seven'] },
  })
  expect(listWrongs(tidyDraft(long)).map(({ detail }) => detail)).toContain(
    '“one two three four five six seven” has more than 6 words.',
  )
})

test('kept words may lack titles and nothing else', () => {
  expect(unfinishedDraft.safeParse(tidyDraft(written)).success).toBe(true)
  expect(unfinishedDraft.safeParse({ ...written, ageGroup: '' }).success).toBe(false)
})

test('a stage called after its pattern takes the new pattern’s name, one with a name of its own keeps it', () => {
  const other = { patternId: id(91), title: 'Round the back' }
  const [first, second] =
    change(
      written,
      { kind: 'stage', progression: 0, at: 1, stage: { ...written.progressions[0]!.stages[1]!, title: 'With poles' } },
      { kind: 'stage-pattern', progression: 0, at: 0, before: pattern, pattern: other },
      { kind: 'stage-pattern', progression: 0, at: 1, before: pattern, pattern: other },
    ).progressions[0]?.stages ?? []
  expect(first).toMatchObject({ title: 'Round the back', patternId: id(91) })
  expect(second).toMatchObject({ title: 'With poles', patternId: id(91) })
})

import { actorOf, checkShape, type PatternDocument, receiverOf } from '@espalier/domain/pattern'
import * as fc from 'fast-check'
import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { blankPattern } from './blank-pattern'
import { ACTION_KINDS } from './change-action'
import { changePattern, type PatternChange } from './edit-pattern'
import { listFaults, tidyPattern } from './tidy-pattern'

const TRUNK = { kind: 'trunk' } as const
const change = (document: PatternDocument, ...edits: readonly PatternChange[]) => edits.reduce(changePattern, document)
const blank = blankPattern('us-7v7', 'U10')
const add = (at: number): PatternChange => ({ kind: 'insert-step', list: TRUNK, at })

test.each(['us-7v7', 'us-9v9', 'ifab-11v11'] as const)('a blank %s pattern lacks only its title', (formatId) => {
  expect(listFaults(blankPattern(formatId, 'U12')).map(({ pointer }) => pointer)).toEqual(['/title'])
})

test('whoever gets the ball plays the next step, whatever was changed', () => {
  const edits: fc.Arbitrary<PatternChange> = fc.oneof(
    fc.nat(12).map(add),
    fc.constantFrom('s1', 's2', 's3', 's4').chain((stepId) =>
      fc.oneof(
        fc.constant<PatternChange>({ kind: 'duplicate-step', stepId }),
        fc.constant<PatternChange>({ kind: 'remove-step', stepId }),
        fc.constant<PatternChange>({ kind: 'add-look', stepId }),
        fc.constantFrom(-1, 1).map((by): PatternChange => ({ kind: 'move-step', stepId, by: by as -1 | 1 })),
        fc.constantFrom(...ACTION_KINDS).map((to): PatternChange => ({ kind: 'action-kind', stepId, to })),
        fc.constant<PatternChange>({ kind: 'add-run', stepId, position: 'RW' }),
      ),
    ),
  )
  fc.assert(
    fc.property(fc.array(edits, { maxLength: 25 }), (list) => {
      const written = change(examplePattern, ...list)
      written.steps.forEach((step, index) => {
        const before = written.steps[index - 1]
        const holder = before === undefined ? undefined : receiverOf(before.action)
        if (typeof holder === 'string') expect(actorOf(step.action)).toBe(holder)
      })
      for (const look of written.looks) {
        const step = written.steps.find((each) => each.stepId === look.stepId)
        expect(step === undefined ? null : actorOf(step.action)).toBe(look.by)
      }
      const ids = [...written.steps, ...written.looks.flatMap((look) => look.answers.flatMap(({ steps }) => steps))]
      expect(new Set(ids.map(({ stepId }) => stepId)).size).toBe(ids.length)
      expect(written.steps.length).toBeGreaterThan(0)
    }),
  )
})

test('five steps are written with four presses and stand without a fault of meaning', () => {
  const written = change(blank, { kind: 'words', field: 'title', text: 'Out' }, add(1), add(2), add(3), add(4))
  expect(written.steps).toHaveLength(5)
  expect(listFaults(tidyPattern(written))).toEqual([])
})

test('a step put between two others leaves both as they were', () => {
  const written = change(examplePattern, add(1))
  expect(written.steps[0]).toEqual(examplePattern.steps[0])
  expect(written.steps[1]?.action.kind).toBe('carry')
  expect(written.steps.slice(2)).toEqual(examplePattern.steps.slice(1))
})

test('a step moved there and back leaves the pattern as it was', () => {
  const there = change(examplePattern, { kind: 'move-step', stepId: 's3', by: -1 })
  expect(there).not.toEqual(examplePattern)
  expect(change(there, { kind: 'move-step', stepId: 's3', by: 1 })).toEqual(examplePattern)
})

test('a copied pass goes back to who played it, so nobody passes to themselves', () => {
  const written = change(blank, { kind: 'duplicate-step', stepId: 's1' })
  const [first, second] = written.steps
  expect(second && receiverOf(second.action)).toBe(first && actorOf(first.action))
  expect(checkShape(written)).toEqual([])
})

test('the last step cannot be taken out', () => {
  expect(change(blank, { kind: 'remove-step', stepId: 's1' })).toBe(blank)
})

test('a look begins with its way out and goes when its step goes', () => {
  const written = change(examplePattern, { kind: 'add-look', stepId: 's3' })
  const [look] = written.looks
  expect(look?.answers.map(({ sign, rejoins }) => [sign, rejoins])).toEqual([['all-shut', 'exit']])
  expect(checkShape(written)).toEqual([])
  expect(change(written, { kind: 'remove-step', stepId: 's3' }).looks).toEqual([])
})

test('an added answer stands before the way out', () => {
  const written = change(examplePattern, { kind: 'add-look', stepId: 's3' }, { kind: 'add-answer', lookId: 'l1' })
  expect(written.looks[0]?.answers.map(({ sign }) => sign)).toEqual(['presser-comes-at', 'all-shut'])
  expect(checkShape(written)).toEqual([])
})

test('an answer that rejoined a step which is gone leads out', () => {
  const looked = change(examplePattern, { kind: 'add-look', stepId: 's3' }, { kind: 'add-answer', lookId: 'l1' })
  const joined = change(looked, {
    kind: 'answer',
    lookId: 'l1',
    answer: 0,
    sign: 'lane-shut',
    about: 'CM',
    rejoins: 's5',
  })
  expect(joined.looks[0]?.answers[0]?.rejoins).toBe('s5')
  expect(change(joined, { kind: 'remove-step', stepId: 's5' }).looks[0]?.answers[0]?.rejoins).toBe('exit')
})

test('who dribbled past something that is taken away carries on without it', () => {
  const dribbled = change(examplePattern, { kind: 'action-kind', stepId: 's2', to: 'dribble-past' })
  expect(dribbled.steps[1]?.action).toMatchObject({ kind: 'dribble-past', past: 'o1' })
  const without = change(dribbled, { kind: 'remove-obstacle', obstacleId: 'o1' })
  expect(without.steps[1]?.action).toMatchObject({ kind: 'carry', at: null })
  expect(checkShape(without)).toEqual([])
})

test('a shot finds another target when its own is taken away', () => {
  const two = change(examplePattern, { kind: 'add-target', target: 'small-goal' })
  const without = change(two, { kind: 'remove-target', targetId: 't1' })
  expect(without.steps.at(-1)?.action).toMatchObject({ kind: 'shot', target: 't2' })
})

test('another game puts everyone in its usual places and keeps the steps', () => {
  const written = change(examplePattern, { kind: 'format', formatId: 'us-9v9' })
  expect(written.positions).toHaveLength(9)
  expect(written.formation).not.toBe(examplePattern.formation)
  expect(written.steps).toHaveLength(5)
  expect(listFaults(written).length).toBeGreaterThan(0)
})

test('another game brings its own goal', () => {
  const written = change(blank, { kind: 'format', formatId: 'us-9v9' })
  expect(written.targets).toEqual(blankPattern('us-9v9', 'U10').targets)
  expect(written.targets).not.toEqual(blank.targets)
})

test('changing one kind of action into another and back keeps who plays and who receives', () => {
  for (const to of ACTION_KINDS) {
    const there = change(examplePattern, { kind: 'action-kind', stepId: 's3', to })
    const back = change(there, { kind: 'action-kind', stepId: 's3', to: 'pass' })
    expect(actorOf(back.steps[2]!.action)).toBe('RCB')
    expect(checkShape(there).filter(({ code }) => code !== 'passer-without-ball')).toEqual([])
  }
})

test('texts are tidied when sent and as typed until then', () => {
  const typed = change(blank, { kind: 'words', field: 'title', text: ' Third  man ' })
  expect(typed.title).toBe(' Third  man ')
  expect(tidyPattern(typed).title).toBe('Third man')
})

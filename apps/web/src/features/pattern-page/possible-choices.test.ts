import type { PatternDocument } from '@espalier/domain/pattern'
import { expect, test } from 'vitest'
import { examplePattern } from '../../drawing/pattern.fixture'
import { changePattern } from './edit-pattern'
import {
  actorChoices,
  kindChoices,
  landmarkChoices,
  receiverChoices,
  rejoinChoices,
  runnerChoices,
} from './possible-choices'
import { findStep } from './step-path'

const found = (document: PatternDocument, stepId: string) => findStep(document, stepId)!
const offOf = (choices: readonly { readonly value: string; readonly off: string | null }[]) =>
  Object.fromEntries(choices.map(({ value, off }) => [value, off]))

test('only who has the ball can play it, and the others say who has', () => {
  const choices = offOf(actorChoices(examplePattern, found(examplePattern, 's4')))
  expect(choices.CM).toBeNull()
  expect(choices.RW).toBe('CM has the ball')
  expect(Object.keys(choices)).toHaveLength(7)
})

test('anyone takes a goal kick, but a ball in the hands is the goalkeeper’s', () => {
  expect(Object.values(offOf(actorChoices(examplePattern, found(examplePattern, 's1'))))).toEqual(Array(7).fill(null))
  const held: PatternDocument = { ...examplePattern, restart: 'goalkeeper-hands' }
  expect(offOf(actorChoices(held, found(held, 's1'))).LCB).toBe('GK holds it')
})

test('nobody passes to themselves', () => {
  expect(offOf(receiverChoices(examplePattern, found(examplePattern, 's3'))).RCB).toBe('has the ball')
})

test('hands are for the goalkeeper’s restart from the hands, and the reason stays readable', () => {
  expect(offOf(kindChoices(examplePattern, found(examplePattern, 's1'))).throw).toContain('goalkeeper')
  const held: PatternDocument = { ...examplePattern, restart: 'goalkeeper-hands' }
  expect(offOf(kindChoices(held, found(held, 's1'))).roll).toBeNull()
  expect(offOf(kindChoices(held, found(held, 's3'))).roll).toContain('goalkeeper')
})

test('a restart that is kicked is not carried; without anything in the way nothing is dribbled past', () => {
  expect(offOf(kindChoices(examplePattern, found(examplePattern, 's1'))).carry).not.toBeNull()
  expect(offOf(kindChoices(examplePattern, found(examplePattern, 's3'))).carry).toBeNull()
  const open: PatternDocument = { ...examplePattern, obstacles: [] }
  expect(offOf(kindChoices(open, found(open, 's3')))['dribble-past']).not.toBeNull()
})

test('who carries or runs already cannot run as well', () => {
  const choices = offOf(runnerChoices(examplePattern, found(examplePattern, 's2').step, null))
  expect(choices.RCB).toContain('ball')
  expect(choices.CM).toBe('runs already')
  expect(choices.LW).toBeNull()
})

test('a landmark that a game has not stays in the list with its reason', () => {
  const nine: PatternDocument = { ...examplePattern, formatId: 'us-9v9' }
  expect(offOf(landmarkChoices(nine))['build-out-line-left']).toContain('not in')
  expect(offOf(landmarkChoices(examplePattern))['build-out-line-left']).toBeNull()
})

test('an answer goes on only where the step is played by who then has the ball', () => {
  const looked = changePattern(examplePattern, { kind: 'add-look', stepId: 's3' })
  const answered = changePattern(looked, { kind: 'add-answer', lookId: 'l1' })
  const receiver = answered.looks[0]?.answers[0]?.steps[0]?.action
  const choices = offOf(rejoinChoices(answered, 'l1', 0, false))
  expect(choices.exit).toBeNull()
  expect(choices.s3).toBeUndefined()
  for (const [stepId, actor] of [
    ['s4', 'CM'],
    ['s5', 'RW'],
  ] as const) {
    const has = receiver !== undefined && 'to' in receiver && receiver.to === actor
    expect(choices[stepId] === null).toBe(has)
  }
  expect(offOf(rejoinChoices(answered, 'l1', 1, true)).s5).not.toBeNull()
})

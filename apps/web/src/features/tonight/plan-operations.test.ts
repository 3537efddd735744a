import { operation } from '@espalier/contract/records'
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { newUuid } from '../../api/identifiers'
import { inputsText } from './evening-facts'
import { exampleFacts, examplePlan } from './plan.fixture'
import { planOperations } from './plan-operations'

const stamp = { at: '2026-10-06T16:40:00.000Z', newId: () => newUuid(1_791_000_000_000) }
const used = { facts: exampleFacts, plan: examplePlan, spaceId: null, inputsHash: 'b'.repeat(64) }

test('a plan computed here is one the API takes, whole', () => {
  const { planId, operations } = planOperations(used, stamp)
  const [kept] = operations
  expect(z.safeParse(operation, kept).error).toBeUndefined()
  expect(kept).toMatchObject({ op: 'keep-plan', id: planId, zone: 'Europe/London' })
})

test('every child of the squad is marked, who came and who did not', () => {
  const here = exampleFacts.turnout.here.slice(2)
  const facts = { ...exampleFacts, turnout: { ...exampleFacts.turnout, here } }
  const attendance = planOperations({ ...used, facts }, stamp).operations[1]
  expect(z.safeParse(operation, attendance).success).toBe(true)
  if (attendance?.op !== 'mark-attendance') throw new Error('attendance comes second')
  expect(attendance.body.marks).toHaveLength(10)
  expect(attendance.body.marks.filter((mark) => !mark.came)).toHaveLength(2)
})

test('a team without a squad marks nobody', () => {
  const facts = { ...exampleFacts, kit: { ...exampleFacts.kit, squad: [] } }
  expect(planOperations({ ...used, facts }, stamp).operations.map((each) => each.op)).toEqual(['keep-plan'])
})

test('what a plan was made from changes with every fact but a name', () => {
  const text = inputsText(exampleFacts)
  const renamed = exampleFacts.kit.squad.map((member) => ({ ...member, shortName: 'Z' }))
  expect(inputsText({ ...exampleFacts, kit: { ...exampleFacts.kit, squad: renamed } })).toBe(text)
  expect(text).not.toContain('Cleo')
  expect(inputsText({ ...exampleFacts, turnout: { ...exampleFacts.turnout, adults: 1 } })).not.toBe(text)
})

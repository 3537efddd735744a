import { operation } from '@espalier/contract/records'
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { newUuid } from '../../api/identifiers'
import { patternActivity } from '../tonight/evening-parts'
import { exampleKit } from '../tonight/kit.fixture'
import { exampleDate, examplePlan } from '../tonight/plan.fixture'
import { questionsOf, type ReportAnswers, reportBodyOf, rungsAround } from './report-answers'

const pattern = patternActivity(examplePlan)
const of = { teamId: exampleKit.team.teamId, dateId: exampleDate.dateId, planId: null, pattern, corrects: null }
const open: ReportAnswers = {
  howFar: undefined,
  gotOut: undefined,
  secondAdult: undefined,
  chips: [],
  turnout: 8,
  guests: 1,
  minutes: 75,
  stageMinutes: 25,
}
const said: ReportAnswers = { ...open, howFar: 'x1', gotOut: 'half', secondAdult: null }

test('three answers make a report that the API takes', () => {
  const body = reportBodyOf(of, said)
  const sent = {
    op: 'report-session',
    v: 1,
    id: newUuid(),
    at: '2026-10-06T17:50:00.000Z',
    zone: 'Europe/London',
    body,
  }
  expect(z.safeParse(operation, sent).error).toBeUndefined()
  expect(body).toMatchObject({ turnout: 8, guests: 1, minutes: 75, secondAdult: null })
  expect(body?.stages).toEqual([{ stageId: pattern?.stageId, pressureReached: 'x1', minutes: 25, gotOut: 'half' }])
})

test.each(['howFar', 'gotOut', 'secondAdult'] as const)('nothing is sent while %s is not said', (name) => {
  expect(reportBodyOf(of, { ...said, [name]: undefined })).toBeNull()
})

test('nobody as second adult is an answer, not a gap', () => {
  expect(reportBodyOf(of, { ...said, secondAdult: null })?.secondAdult).toBeNull()
})

test('a pattern that was left out needs no judgement and trains no stage', () => {
  const answers: ReportAnswers = { ...open, howFar: 'not-reached', secondAdult: null, chips: ['weather'] }
  expect(questionsOf(pattern, answers)).toEqual(['how-far', 'second-adult'])
  const body = reportBodyOf(of, answers)
  expect(body?.stages).toEqual([])
  expect(body?.changes).toEqual([{ stageId: pattern?.stageId, chip: 'weather' }])
})

test('an evening of games only is reported with one answer', () => {
  const games = { ...of, pattern: null }
  expect(questionsOf(null, open)).toEqual(['second-adult'])
  const body = reportBodyOf(games, {
    ...open,
    secondAdult: exampleKit.adults[1]?.memberId ?? null,
    chips: ['own-idea'],
  })
  expect(body?.stages).toEqual([])
  expect(body?.changes).toEqual([{ stageId: null, chip: 'own-idea' }])
})

test('the rungs offered hold tonight’s, three below and one above', () => {
  expect(rungsAround('x1')).toEqual(['none', 'poles', 'shadow', 'x1', 'x2'])
  expect(rungsAround('none')).toEqual(['none', 'poles'])
  expect(rungsAround('x6')).toEqual(['x3', 'x4', 'x5', 'x6'])
})

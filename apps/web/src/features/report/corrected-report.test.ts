import { type RecordRow, recordRow } from '@espalier/contract/records'
import { expect, test } from 'vitest'
import * as z from 'zod/mini'
import { exampleKit } from '../tonight/kit.fixture'
import { answersThen, findCorrected, reportedPattern } from './corrected-report'

const id = (end: string) => `0199c0de-0000-7000-8000-0000000000${end}`
const kit = exampleKit
const [adult] = kit.adults
const [stage, other] = kit.adopted!.content.progressions.flatMap(({ stages }) => stages)
const sent: RecordRow = z.parse(recordRow, {
  recordId: id('01'),
  dateId: id('02'),
  teamId: kit.team.teamId,
  localDate: '2026-10-06',
  turnout: 8,
  guests: 1,
  minutes: 75,
  stages: [{ stageId: stage!.stageId, pressureReached: 'poles', minutes: 20, gotOut: 'half' }],
  author: 'Ada',
  secondAdult: adult!.displayName,
  reportedAt: '2026-10-06T17:50:00.000Z',
  late: false,
  standing: 'stands',
  changes: [{ stageId: stage!.stageId, chip: 'weather' }],
  entryId: id('03'),
  entrySeq: 4,
})

test('a correction opens with what was sent', () => {
  const pattern = reportedPattern(sent, kit, null)
  expect(pattern).toMatchObject({ stageId: stage!.stageId, title: stage!.title, pressure: stage!.pressure })
  expect(answersThen({ record: sent, pattern }, kit)).toEqual({
    howFar: 'poles',
    gotOut: 'half',
    secondAdult: adult!.memberId,
    chips: ['weather'],
    turnout: 8,
    guests: 1,
    minutes: 75,
    stageMinutes: 20,
  })
})

test('the reported stage stays the one of the correction when the team has moved on', () => {
  const planned = { stageId: other?.stageId ?? id('09'), title: 'Later', pressure: 'x1' } as const
  expect(reportedPattern(sent, kit, planned)?.stageId).toBe(stage!.stageId)
  const leftOut = { ...sent, stages: [], changes: [] }
  expect(reportedPattern(leftOut, kit, planned)).toBe(planned)
  expect(answersThen({ record: leftOut, pattern: planned }, kit).howFar).toBe('not-reached')
})

test('nobody is nobody, and who has left the club is asked for again', () => {
  expect(answersThen({ record: { ...sent, secondAdult: null }, pattern: null }, kit).secondAdult).toBeNull()
  expect(answersThen({ record: { ...sent, secondAdult: 'Gone' }, pattern: null }, kit).secondAdult).toBeUndefined()
})

test('what is corrected is this phone’s own report, else the one that stands; never one corrected already', () => {
  const rival: RecordRow = { ...sent, recordId: id('04'), standing: 'rival' }
  const old: RecordRow = { ...sent, recordId: id('05'), standing: 'superseded' }
  const elsewhere: RecordRow = { ...sent, recordId: id('06'), dateId: id('07') }
  const records = [elsewhere, old, rival, sent]
  const find = (reportId: string | null) => findCorrected({ records, dateId: sent.dateId, reportId })?.recordId ?? null
  expect(find(rival.recordId)).toBe(rival.recordId)
  expect(find(null)).toBe(sent.recordId)
  expect(find(old.recordId)).toBe(sent.recordId)
  expect(findCorrected({ records: [old, elsewhere], dateId: sent.dateId, reportId: null })).toBeNull()
})

import type { OperationResult } from '@espalier/contract/records'
import { expect, test } from 'vitest'
import { nextBatch, settle, type Waiting } from './waiting'

const ME = { clubId: 'club', memberId: 'me' }

function waiting(id: string, changed: Partial<Waiting> = {}): Waiting {
  return {
    clubId: 'club',
    memberId: 'me',
    teamId: 'team',
    operation: { op: 'report-session', id, at: '2026-10-06T17:00:00.000Z', body: { turnout: 8 } },
    refusal: null,
    ...changed,
  }
}

function result(id: string, status: OperationResult['status']): OperationResult {
  const problem = {
    code: 'date-unknown',
    title: 'The team has no such training date',
    status: 422,
    errors: [{ pointer: '/body/dateId', detail: 'is no date of this team' }],
  }
  return { id, status, entry: null, problem: status === 'refused' ? problem : null }
}

test('a batch holds one club, oldest first, and nothing that was refused', () => {
  const refused = waiting('1', { refusal: { title: 'no', details: [] } })
  const batch = nextBatch([waiting('3'), refused, waiting('2'), waiting('0', { clubId: 'other' })], ME)
  expect(batch.map((each) => each.operation.id)).toEqual(['2', '3'])
})

test('what another member wrote on this phone is in no batch of mine', () => {
  const theirs = waiting('1', { memberId: 'another' })
  expect(nextBatch([theirs, waiting('2')], ME).map((each) => each.operation.id)).toEqual(['2'])
  expect(nextBatch([theirs], { clubId: 'club', memberId: 'another' })).toEqual([theirs])
})

test('never more goes at once than the API takes', () => {
  const many = Array.from({ length: 205 }, (_, index) => waiting(String(1000 + index)))
  expect(nextBatch(many, ME)).toHaveLength(200)
})

test('an operation leaves the phone only when the server says it has it', () => {
  const sent = [waiting('1'), waiting('2'), waiting('3'), waiting('4')]
  const settled = settle(sent, [result('1', 'applied'), result('2', 'replayed'), result('3', 'unknown')])
  expect(settled).toEqual({ taken: ['1', '2'], refused: [] })
})

test('a refused operation stays with its content and the reason', () => {
  const { taken, refused } = settle([waiting('1')], [result('1', 'refused')])
  expect(taken).toEqual([])
  expect(refused[0]?.operation['body']).toEqual({ turnout: 8 })
  expect(refused[0]?.refusal).toEqual({
    title: 'The team has no such training date',
    details: ['is no date of this team'],
  })
})

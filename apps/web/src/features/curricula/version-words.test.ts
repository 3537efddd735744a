import type { Team } from '@espalier/contract/places'
import { expect, test } from 'vitest'
import { readCurriculum } from './add-curriculum-form'
import { linesOf } from './lines-blank'
import { dayOf, followersOf, teamsToMove } from './version-words'

const team = (teamId: string, follows: Team['follows']): Team => ({
  teamId,
  seasonId: 's',
  name: teamId,
  ageGroup: 'U10',
  category: 'mixed',
  formatId: 'us-7v7',
  version: 1,
  follows,
  squadSize: 10,
  reach: null,
})
const teams = [
  team('larks', { curriculumId: 'c', number: 3, fromDate: '2026-09-01' } as Team['follows']),
  team('swifts', { curriculumId: 'c', number: 2, fromDate: '2026-09-01' } as Team['follows']),
  team('wrens', null),
]
const names = (list: readonly Team[]) => list.map(({ name }) => name)

test('followers of a version are those of this curriculum and this number', () => {
  expect(names(followersOf(teams, 'c', 3))).toEqual(['larks'])
  expect(names(followersOf(teams, 'd', 3))).toEqual([])
})

test('a director moves any team, a coach the own one where the club allows it, anyone else none', () => {
  const coach = [{ role: 'coach', teamId: 'swifts' }]
  expect(names(teamsToMove(teams, [{ role: 'director', teamId: null }], false))).toHaveLength(3)
  expect(names(teamsToMove(teams, coach, true))).toEqual(['swifts'])
  expect(names(teamsToMove(teams, coach, false))).toEqual([])
  expect(names(teamsToMove(teams, [{ role: 'assistant', teamId: 'swifts' }], true))).toEqual([])
})

test('the day of an instant is the club’s day', () => {
  expect(dayOf('2026-09-01T23:30:00.000Z', 'America/New_York')).toBe('2026-09-01')
  expect(dayOf('2026-09-01T23:30:00.000Z', 'Europe/Madrid')).toBe('2026-09-02')
})

test('lines that say nothing are no lines, and there are not more than so many', () => {
  expect(linesOf(' Two touches \n\n First to three\nx', 2)).toEqual(['Two touches', 'First to three'])
})

test('a form without a name is refused at its field; with one it is a body with an empty draft', () => {
  const form = new FormData()
  form.set('document/name', '  ')
  form.set('document/ageGroup', 'U10')
  form.set('document/formatId', 'us-7v7')
  expect(readCurriculum(form, 'i')).toMatchObject({ ok: false, wrong: { 'document/name': expect.any(String) } })
  form.set('document/name', ' Out ')
  expect(readCurriculum(form, 'i')).toMatchObject({
    ok: true,
    body: { id: 'i', document: { name: 'Out', progressions: [], modelSessions: [] } },
  })
})

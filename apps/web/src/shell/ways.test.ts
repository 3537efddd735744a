import type { Me } from '@espalier/contract/sign-in'
import { expect, test } from 'vitest'
import { roleWords } from './role-words'
import { clubWays, teamWays } from './ways'

const coach = { role: 'coach', teamId: 't1', teamName: 'U10 Larks' } as const
const assistant = { role: 'assistant', teamId: 't1', teamName: 'U10 Larks' } as const
const director = { role: 'director', teamId: null, teamName: null } as const

function club(...roles: Me['clubs'][number]['roles']): Me['clubs'][number] {
  return { clubId: 'c1', name: 'Quillmoor Juniors', demo: true, memberId: 'm1', displayName: 'Dana', roles }
}

test('a coach comes first to tonight, with club and team in the address', () => {
  expect(teamWays(club(coach))[0]?.tonight).toEqual({
    title: 'Tonight with U10 Larks',
    href: '/field?club=c1&team=t1',
  })
})

test('who coaches and assists the same team is led there once', () => {
  expect(teamWays(club(coach, assistant))).toHaveLength(1)
})

test('a coach is not led to people, a director is', () => {
  expect(clubWays(club(coach)).map((way) => way.title)).not.toContain('People')
  expect(clubWays(club(director)).map((way) => way.title)).toContain('People')
})

test('with several roles every way is shown once', () => {
  const titles = clubWays(club(coach, director)).map((way) => way.title)
  expect(new Set(titles).size).toBe(titles.length)
})

test('roles are said as people say them', () => {
  expect(roleWords(coach)).toBe('coach of U10 Larks')
  expect(roleWords(director)).toBe('technical director')
})

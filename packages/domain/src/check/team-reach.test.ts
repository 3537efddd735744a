import { expect, test } from 'vitest'
import { TEAM_REACH_CHECK, teamReachOf } from './team-reach'

test('the foot that reaches further is the strong one, whichever was written first, and both are the club’s', () => {
  const reach = teamReachOf(9, 14)
  expect(reach).toMatchObject({ ok: true, value: { strongFoot: { value: 14, kind: 'club' }, otherFoot: { value: 9 } } })
  expect(reach).toEqual(teamReachOf(14, 9))
})

test.each([0, -3, 61, Number.NaN, Number.POSITIVE_INFINITY])(
  '%d metres is no distance a coach has measured',
  (length) => {
    expect(teamReachOf(length, 10)).toEqual({ ok: false, refusal: { code: 'reach-out-of-range', mostMetres: 60 } })
    expect(teamReachOf(10, length).ok).toBe(false)
  },
)

test('60 metres still is', () => {
  expect(teamReachOf(60, 60).ok).toBe(true)
})

test('the field check is told in sentences and asks for nobody’s name', () => {
  const text = TEAM_REACH_CHECK.join(' ')
  expect(text).toMatch(/three metres/)
  expect(text).toMatch(/[Ss]even/)
  expect(text).toMatch(/no names/)
  for (const sentence of TEAM_REACH_CHECK) expect(sentence).toMatch(/^[A-Z].*\.$/u)
})

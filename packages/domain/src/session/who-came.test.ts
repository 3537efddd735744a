import { expect, test } from 'vitest'
import { ageBand } from './age-defaults'
import { kit, turnout } from './kit.fixture'
import { guestIds, whoCame } from './who-came'

test('a child ticked twice plays once, one who sits out does not play, guests have ids of their own', () => {
  const who = whoCame(kit(), turnout(['c02', 'c01', 'c02', 'c03'], { sitsOut: ['c03'], guests: ['XY', 'guest:AB'] }))
  expect(who.children.map((child) => child.playerId)).toEqual(['c01', 'c02', 'guest:AB', 'guest:XY'])
  expect(who.sitsOut).toEqual(['c03'])
})

test('initials are stripped of spaces and cut, and none at all is still a child', () => {
  expect(guestIds(['A B', '', 'AB', 'Maximilian'])).toEqual(['guest:?', 'guest:AB', 'guest:AB-2', 'guest:Maximili'])
})

test('a guest is not sent in goal and has no history', () => {
  const who = whoCame(kit(), turnout([], { guests: ['AB'] }))
  expect(who.children[0]).toMatchObject({ goalkeeper: 'no', home: null, past: { blocks: 0, left: 0, right: 0 } })
})

test.each([
  ['U8', 'U8'],
  ['U9 girls', 'U10'],
  ['U11-U12', 'U12'],
  ['Under tens', 'U10'],
  ['u16', 'U12'],
])('the habits of %s are those of %s', (ageGroup, band) => {
  expect(ageBand(ageGroup)).toBe(band)
})

import { renderToStaticMarkup } from 'react-dom/server'
import { expect, test } from 'vitest'
import type { Waiting } from '../../offline/waiting'
import { childNames } from './child-names'
import { EveningLine } from './evening-line'
import { patternActivity } from './evening-parts'
import { exampleKit } from './kit.fixture'
import { LineUp } from './line-up'
import { exampleDate, exampleEvening, examplePlan } from './plan.fixture'
import { RefusedList } from './refused-list'
import { WhoCame } from './who-came'

const nothing = () => undefined

test('every child of the squad is one press that says whether it came', () => {
  const [ada] = exampleKit.squad
  const evening = { ...exampleEvening, away: [ada?.playerId ?? ''] }
  const html = renderToStaticMarkup(<WhoCame kit={exampleKit} evening={evening} change={nothing} />)
  expect(html.match(/aria-pressed="true"/g)).toHaveLength(9)
  expect(html.match(/aria-pressed="false"/g)).toHaveLength(1)
  expect(html).toContain('9 of 10')
})

test('the evening says each activity with its clock and its minutes in words', () => {
  const html = renderToStaticMarkup(<EveningLine plan={examplePlan} localStart={exampleDate.localStart} />)
  for (const activity of examplePlan.activities) {
    expect(html).toContain(activity.title)
    expect(html).toContain(`${activity.minutes} minutes`)
  }
  expect(html).toContain('17:30')
  expect(html).toContain('18:45')
})

test('the line of the evening is as long as its minutes', () => {
  const html = renderToStaticMarkup(
    <EveningLine plan={examplePlan} localStart={exampleDate.localStart} unitsAMinute={10} />,
  )
  const heights = [...html.matchAll(/height="(\d+)"/g)].map((match) => Number(match[1]))
  expect(heights.reduce((sum, height) => sum + height, 0)).toBe(examplePlan.totalMinutes * 10)
})

test('a line-up names who is new at a place, also to those who cannot see the line under it', () => {
  const blocks = patternActivity(examplePlan)?.lineups?.blocks ?? []
  const [first] = blocks
  if (first === undefined) throw new Error('the example evening holds line-ups')
  const [keeper, other, ...rest] = first.places
  if (keeper === undefined || other === undefined) throw new Error('a line-up holds places')
  const swapped = {
    ...first,
    places: [{ ...keeper, childId: other.childId }, { ...other, childId: keeper.childId }, ...rest],
  }
  const words = { formation: [], opponents: 0, nameOf: childNames(exampleKit), title: 'Rounds', figure: '2' }
  const html = renderToStaticMarkup(<LineUp block={swapped} before={first} {...words} />)
  expect(html.match(/new here/g)).toHaveLength(2)
  expect(renderToStaticMarkup(<LineUp block={first} before={first} {...words} />)).not.toContain('new here')
})

test('a refused report stays on the page with its evening, the reason and all it says', () => {
  const refused: Waiting = {
    clubId: exampleKit.club.clubId,
    memberId: 'me',
    teamId: exampleKit.team.teamId,
    operation: {
      op: 'report-session',
      id: 'r1',
      at: '2026-10-06T17:50:00.000Z',
      body: { dateId: exampleDate.dateId, turnout: 8 },
    },
    refusal: { title: 'A report of this evening stands already', details: [] },
  }
  const list = (waiting: readonly Waiting[]) =>
    renderToStaticMarkup(<RefusedList kit={exampleKit} waiting={waiting} onDismiss={nothing} />)
  expect(list([refused])).toContain('Your report of Tuesday 6 October')
  expect(list([refused])).toContain('A report of this evening stands already')
  expect(list([refused])).toContain('&quot;turnout&quot;: 8')
  expect(list([{ ...refused, refusal: null }])).toBe('')
})

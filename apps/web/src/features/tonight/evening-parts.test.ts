import { expect, test } from 'vitest'
import { clockAfter, eveningParts, patternActivity } from './evening-parts'
import { examplePlan } from './plan.fixture'

test.each([
  ['17:30', 0, '17:30'],
  ['17:30', 45, '18:15'],
  ['23:50', 15, '00:05'],
])('%s and %d minutes is %s', (start, minutes, clock) => {
  expect(clockAfter(start, minutes)).toBe(clock)
})

test('activities and pauses lie end to end over the whole evening', () => {
  let end = 0
  for (const part of eveningParts(examplePlan)) {
    expect(part.startMinute).toBe(end)
    end += part.kind === 'activity' ? part.activity.minutes : part.pause.minutes
  }
  expect(end).toBe(examplePlan.totalMinutes)
})

test('an evening of games has no pattern activity', () => {
  expect(patternActivity(examplePlan)?.kind).toBe('pattern')
  const games = examplePlan.activities.filter((activity) => activity.kind !== 'pattern')
  expect(patternActivity({ ...examplePlan, activities: games })).toBeNull()
})

import { describe, expect, test } from 'vitest'
import { describePlanChange } from './describe-plan-change'
import { evening, plainSpace, turnout } from './kit.fixture'
import { planEvening } from './plan-evening'

const facts = evening(8)
const before = planEvening(facts)

describe('one line on what changed', () => {
  test('is null where nothing did', () => {
    expect(describePlanChange(before, planEvening(facts))).toBeNull()
  })

  test('says the new number and what the games became', () => {
    const after = planEvening({ ...facts, turnout: turnout(facts.turnout.here.slice(1)) })
    expect(describePlanChange(before, after)).toContain('7 play, not 8. Small-sided game: 3v3 and one plus player.')
  })

  test('says that only games are left when too few play', () => {
    const after = planEvening({ ...facts, turnout: turnout(facts.turnout.here.slice(0, 3)) })
    expect(describePlanChange(before, after)).toContain('3 play, not 8. Games only now.')
  })

  test('says that other children play when the number stays', () => {
    const here = ['c09', ...facts.turnout.here.slice(1)]
    const after = planEvening({ ...facts, turnout: turnout(here) })
    expect(describePlanChange(before, after)).toContain('Still 8, but other children play.')
  })

  test('says an activity that a second adult makes possible', () => {
    const after = planEvening({ ...facts, turnout: { ...facts.turnout, adults: 2 } })
    expect(describePlanChange(before, after)).toContain('In: Rondo.')
  })

  test('says how much of the set-out another space changes', () => {
    const after = planEvening({ ...facts, space: plainSpace(60, 60) })
    expect(describePlanChange(before, after)).toMatch(/Set-out: \d+ new, \d+ away\./)
  })
})

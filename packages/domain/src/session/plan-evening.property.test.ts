import fc from 'fast-check'
import { describe, expect, test, vi } from 'vitest'
import { planChecks } from './check-plan'
import { evenings } from './evening.arbitrary.fixture'
import { areaInsideSpace, areasOverlap } from './fit-areas'
import type { EveningFacts } from './plan-evening'
import { planEvening } from './plan-evening'
import { replaySetOut } from './set-out'

// Each property sees its own evenings; a plan takes some milliseconds, so forty keep the run short.
const RUNS = { numRuns: 40 }
vi.setConfig({ testTimeout: 60_000 })

function always(holds: (facts: EveningFacts) => void) {
  fc.assert(fc.property(evenings(), holds), RUNS)
}

describe('any evening of 4 to 24 children, one adult or two, 15 to 70 m each way, 45 to 90 minutes, any bag', () => {
  test('activities and pauses sum to the slot, and the server finds no fault', () => {
    always((facts) => {
      const plan = planEvening(facts)
      const parts = [...plan.activities, ...plan.pauses]
      expect(parts.reduce((sum, part) => sum + part.minutes, 0)).toBe(facts.date.minutes)
      const squadIds = facts.kit.squad.map((member) => member.playerId)
      const known = { slotMinutes: facts.date.minutes, space: facts.space, stageIds: ['only'], squadIds }
      expect(planChecks(plan, known)).toEqual([])
    })
  })

  test('no area leaves the space or overlaps another of its activity', () => {
    always((facts) => {
      for (const { areas } of planEvening(facts).activities) {
        areas.forEach((area, index) => {
          expect(areaInsideSpace(area, facts.space)).toBe(true)
          for (const other of areas.slice(index + 1)) expect(areasOverlap(area, other)).toBe(false)
          expect([area.upMm, area.rightMm, area.lengthMm, area.widthMm].every(Number.isSafeInteger)).toBe(true)
        })
      }
    })
  })

  test('every child who plays stands in exactly one group of each activity, whoever sits out in none', () => {
    always((facts) => {
      const plan = planEvening(facts)
      const guests = ['guest:AB', 'guest:AB-2'].slice(0, facts.turnout.guests.length)
      const ticked = facts.turnout.here.filter((id) => !facts.turnout.sitsOut.includes(id))
      const playing = [...ticked, ...guests]
      for (const { groups } of plan.activities) {
        expect(groups.flatMap((group) => group.children).toSorted()).toEqual(playing)
      }
      expect(plan.sitsOut).toEqual(facts.turnout.sitsOut.toSorted())
    })
  })

  test('every stop of the set-out is reached by its own legs within half a pace each way', () => {
    always((facts) => {
      const plan = planEvening(facts)
      const walk = replaySetOut(plan.setOut, facts.space, facts.paceMm, facts.kit.adopted?.content.settings)
      let at = plan.setOut[0]!
      plan.setOut.forEach((stop, index) => {
        at = { ...at, ...walk[index]?.at(-1) }
        expect(Math.hypot(at.upMm - stop.upMm, at.rightMm - stop.rightMm)).toBeLessThanOrEqual(
          facts.paceMm / Math.SQRT2,
        )
        expect(stop.legs.every((leg) => leg.paces >= 1)).toBe(true)
        expect(stop.legs.map(({ upMm, rightMm }) => ({ upMm, rightMm }))).toEqual(walk[index])
      })
    })
  })

  test('what the plan needs is what its stops, teams and groups use, and what is short is the difference', () => {
    always((facts) => {
      const plan = planEvening(facts)
      for (const kind of ['cone', 'pole', 'small-goal'] as const) {
        expect(plan.equipmentNeeded[kind]).toBe(plan.setOut.filter((stop) => stop.item === kind).length)
        expect(plan.equipmentShort[kind]).toBe(Math.max(0, plan.equipmentNeeded[kind] - facts.kit.equipment[kind]))
      }
    })
  })

  test('the plan does not depend on the order in which squad, ticks and guests are listed', () => {
    always((facts) => {
      const turned: EveningFacts = {
        ...facts,
        kit: { ...facts.kit, squad: facts.kit.squad.toReversed() },
        turnout: {
          ...facts.turnout,
          here: facts.turnout.here.toReversed(),
          sitsOut: facts.turnout.sitsOut.toReversed(),
          guests: facts.turnout.guests.toReversed(),
        },
      }
      expect(JSON.stringify(planEvening(turned))).toBe(JSON.stringify(planEvening(facts)))
    })
  })

  test('line-ups fill each position once a block with children who play, sides blocked left before right', () => {
    always((facts) => {
      const plan = planEvening(facts)
      for (const { lineups, opponents } of plan.activities) {
        if (!lineups) continue
        for (const block of lineups.blocks) {
          const named = [...block.places.map((place) => place.childId), ...block.off].toSorted()
          expect(named).toEqual(plan.children)
          expect(block.off.length).toBeGreaterThanOrEqual(opponents)
        }
        const sides = lineups.blocks.map((block) => block.side)
        expect(sides).toEqual(sides.toSorted())
      }
    })
  })

  test('a plan without the pattern says why', () => {
    const reasons = ['games-only', 'no-version', 'no-stage', 'space-too-small']
    always((facts) => {
      const plan = planEvening(facts)
      if (plan.kind === 'games-only') expect(plan.notes.some((note) => reasons.includes(note.code))).toBe(true)
    })
  })
})

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type DateToPlan, planStages, type StageToPlan } from './plan-stages'

const stage = (stageId: string, days = 0): StageToPlan => ({ stageId, minutes: 20, days })
const dates = (count: number): readonly DateToPlan[] =>
  Array.from({ length: count }, (_, at) => ({
    dateId: `d${String(at).padStart(2, '0')}`,
    localDate: `2026-09-${String(at + 1).padStart(2, '0')}`,
  }))
const plan = (stages: readonly StageToPlan[], count: number) =>
  planStages(stages, dates(count)).map(({ stageId }) => stageId)

test('each stage has three separate dates in the order of the progression, then they come round again', () => {
  expect(plan([stage('a'), stage('b')], 9)).toEqual(['a', 'a', 'a', 'b', 'b', 'b', 'a', 'b', 'a'])
})

test('days already practised count', () => {
  expect(plan([stage('a', 2), stage('b', 3), stage('c')], 5)).toEqual(['a', 'c', 'c', 'c', 'a'])
})

test('without stages or dates there is nothing to plan', () => {
  expect(planStages([], dates(3))).toEqual([])
  expect(planStages([stage('a')], [])).toEqual([])
})

test('every date has one stage, in whatever order the dates are given, and no stage waits while a later one has its days', () => {
  const counts = fc.array(fc.nat(4), { minLength: 1, maxLength: 6 })
  fc.assert(
    fc.property(counts, fc.nat(20), fc.array(fc.nat()), (days, count, keys) => {
      const stages = days.map((practised, at) => stage(`s${at}`, practised))
      const ordered = dates(count)
      const shuffled = ordered.map((date, at) => ({ date, key: keys[at] ?? at })).sort((a, b) => a.key - b.key)
      const planned = planStages(
        stages,
        shuffled.map(({ date }) => date),
      )
      expect(planned).toEqual(planStages(stages, ordered))
      expect(planned.map(({ dateId }) => dateId)).toEqual(ordered.map(({ dateId }) => dateId))
      const total = (id: string, upTo: number) =>
        stages.find(({ stageId }) => stageId === id)!.days +
        planned.slice(0, upTo).filter(({ stageId }) => stageId === id).length
      planned.forEach(({ stageId }, at) => {
        const earlier = stages.slice(
          0,
          stages.findIndex((one) => one.stageId === stageId),
        )
        expect(earlier.every((one) => total(one.stageId, at) >= 3)).toBe(true)
      })
    }),
  )
})

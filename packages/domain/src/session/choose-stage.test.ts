import { describe, expect, test } from 'vitest'
import type { Progression } from '../curriculum'
import { localDate } from '../quantities'
import { chooseEvening, progressionsInOrder } from './choose-stage'
import type { StageProgress } from './kit'
import { modelSession, stage, versionContent } from './kit.fixture'

function practised(stageId: string, sessions: number, lastDate = '2026-10-01'): StageProgress {
  const attempts = { attemptsLeft: 0, attemptsRight: 0, gotOutLeft: 0, gotOutRight: 0 }
  return { stageId, sessions, lastDate: localDate(lastDate), ...attempts }
}

function progression(progressionId: string, stageIds: readonly string[], after: readonly string[] = []): Progression {
  return { progressionId, title: progressionId, stages: stageIds.map((id) => stage(id, 'none')), after }
}

describe('the next stage', () => {
  const content = versionContent({ progressions: [progression('g', ['a', 'b', 'c'])] })

  test('is the first one practised on fewer than three separate days', () => {
    expect(chooseEvening(content, []).choice).toEqual({ stageId: 'a', reason: 'next', kind: 'habit' })
    expect(chooseEvening(content, [practised('a', 2)]).choice?.stageId).toBe('a')
    expect(chooseEvening(content, [practised('a', 3)]).choice?.stageId).toBe('b')
  })

  test('is the one practised longest ago, again, once all were practised', () => {
    const all = [practised('a', 3, '2026-10-20'), practised('b', 4, '2026-09-01'), practised('c', 3, '2026-09-20')]
    expect(chooseEvening(content, all).choice).toMatchObject({ stageId: 'b', reason: 'again' })
  })

  test('is null where the version holds none', () => {
    expect(chooseEvening(versionContent({ progressions: [] }), [])).toMatchObject({ stage: null, choice: null })
  })
})

describe('the model session', () => {
  const content = versionContent({ progressions: [progression('g', ['a', 'b'])] })
  const named = { ...modelSession('b'), modelSessionId: 'named' }
  const open = { ...modelSession(null), modelSessionId: 'open' }

  test('is the one that names the stage, else one that leaves it open', () => {
    const both = { ...content, modelSessions: [open, named] }
    expect(chooseEvening(both, []).model?.modelSessionId).toBe('open')
    expect(chooseEvening(both, [practised('a', 3)]).model?.modelSessionId).toBe('named')
  })

  test('where all name other stages, the first is run with the stage it names', () => {
    const chosen = chooseEvening({ ...content, modelSessions: [named] }, [])
    expect(chosen.choice).toEqual({ stageId: 'b', reason: 'named-by-model', kind: 'club' })
  })
})

test('progressions that come first come first; a circle keeps the written order', () => {
  const inOrder = (list: readonly Progression[]) => progressionsInOrder(list).map((each) => each.progressionId)
  expect(inOrder([progression('y', [], ['x']), progression('x', [])])).toEqual(['x', 'y'])
  expect(inOrder([progression('y', [], ['x']), progression('x', [], ['y'])])).toEqual(['y', 'x'])
  expect(inOrder([progression('y', [], ['gone']), progression('x', [])])).toEqual(['y', 'x'])
})

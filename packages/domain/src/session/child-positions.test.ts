import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { solveWithStandIns } from './child-positions'
import { squad } from './kit.fixture'
import type { Child } from './who-came'

const SEVEN = ['CM', 'GK', 'LCB', 'LW', 'RCB', 'RW', 'ST'] as const
const BLOCKS = ['left', 'left', 'right', 'right'] as const

describe('line-ups of whoever came', () => {
  test('fill every place whatever home, stretch and willingness, with one goalkeeper who is willing', () => {
    const position = fc.constantFrom(...SEVEN, 'CB', null)
    const child = fc.record({
      home: position,
      stretch: position,
      goalkeeper: fc.constantFrom('yes', 'sometimes', 'no'),
    })
    fc.assert(
      fc.property(fc.array(child, { minLength: 7, maxLength: 12 }), (wishes) => {
        const children = squad(wishes.length).map((member, index): Child => ({ ...member, ...wishes[index] }) as Child)
        const willing = children.filter((each) => each.goalkeeper !== 'no').map((each) => each.playerId)
        const positions = willing.length > 0 ? SEVEN : SEVEN.filter((each) => each !== 'GK')
        const { lineups } = solveWithStandIns(children, positions, BLOCKS)
        for (const block of lineups.blocks) {
          expect(block.places.map((place) => place.position)).toEqual(positions)
          const keeper = block.places.find((place) => place.position === 'GK')?.childId
          if (keeper !== undefined) expect(willing).toContain(keeper)
        }
      }),
      { numRuns: 40 },
    )
  }, 60_000)

  test('keep children to home and stretch where that fills every place, and name nothing as lacking', () => {
    const homes = ['GK', 'LCB', 'RCB', 'LW', 'CM', 'RW', 'ST']
    const children = squad(7).map((member, index): Child => {
      return { ...member, home: homes[index]!, stretch: null, goalkeeper: index === 0 ? 'yes' : 'no' }
    })
    const { lineups, lacking } = solveWithStandIns(children, SEVEN, BLOCKS)
    expect(lacking).toEqual([])
    const keepers = lineups.blocks.map((block) => block.places.find((place) => place.position === 'GK')?.childId)
    expect(new Set(keepers)).toEqual(new Set(['c01']))
  })

  test('children without positions are spread over those that fewest others cover', () => {
    const children = squad(8).map(
      (member): Child => ({ ...member, home: null, stretch: null, goalkeeper: 'sometimes' }),
    )
    expect(solveWithStandIns(children, SEVEN, BLOCKS).lacking).toEqual([])
  })
})

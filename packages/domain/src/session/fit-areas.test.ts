import { describe, expect, test } from 'vitest'
import { AREA_SIZES } from './area-sizes'
import { areasOverlap, edgesOf, fitAreas } from './fit-areas'
import { plainSpace } from './kit.fixture'

describe('areas', () => {
  test('with room for all, a game of eight has its usual square metres, four long to three wide', () => {
    const { areas, squareMetresEach } = fitAreas('small-sided-game', [8], plainSpace(60, 40))
    const { min, usual } = AREA_SIZES['small-sided-game'].value
    expect(squareMetresEach).toBeGreaterThanOrEqual(usual - 2)
    expect(squareMetresEach).toBeGreaterThan(min)
    expect(areas[0]!.lengthMm / areas[0]!.widthMm).toBeCloseTo(4 / 3, 1)
  })

  test('two areas keep a walking lane of two metres between them', () => {
    const { areas } = fitAreas('rondo', [5, 5], plainSpace(30, 40))
    expect(areasOverlap(areas[0]!, areas[1]!)).toBe(false)
    const [left, right] = [edgesOf(areas[0]!), edgesOf(areas[1]!)]
    const gap = left.rightMm < right.leftMm ? right.leftMm - left.rightMm : right.nearMm - left.farMm
    expect(gap).toBe(2000)
  })

  test('in a space too small they shrink and say how many square metres are left', () => {
    const { areas, squareMetresEach } = fitAreas('small-sided-game', [12, 12], plainSpace(15, 15))
    expect(squareMetresEach).toBeLessThan(AREA_SIZES['small-sided-game'].value.min)
    expect(areasOverlap(areas[0]!, areas[1]!)).toBe(false)
  })

  test('touching areas do not overlap, areas one millimetre into each other do', () => {
    const { areas } = fitAreas('rondo', [4], plainSpace(30, 30))
    const area = areas[0]!
    const beside = { ...area, rightMm: (area.rightMm + area.widthMm) as typeof area.rightMm }
    expect(areasOverlap(area, beside)).toBe(false)
    expect(areasOverlap(area, { ...beside, rightMm: (beside.rightMm - 1) as typeof area.rightMm })).toBe(true)
  })
})

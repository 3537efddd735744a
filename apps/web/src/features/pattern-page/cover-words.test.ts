import { coverOf } from '@espalier/domain/check'
import { nominalSpace } from '@espalier/domain/pitch'
import { describe, expect, test } from 'vitest'
import { lookedPattern as document } from '../../drawing/looked-pattern.fixture'
import { coverMapInWords } from './cover-map-words'
import { borderPath, coverCells, coverRegions, hatchPath, letterCells } from './cover-regions'
import { coverSentence } from './cover-words'

const space = nominalSpace(document.formatId)
const cover = coverOf(document, space)[0]!
const cells = coverCells(cover)

describe('what is said of a look', () => {
  test('a director reads the domain’s sentence with its share, a coach the same holes without one', () => {
    for (const count of cover.counts) {
      expect(coverSentence(count, 'director')).toBe(count.sentence)
      const told = coverSentence(count, 'coach')
      expect(told).not.toMatch(/%|\d/)
      for (const hole of count.holes) expect(told).toContain(hole.words)
    }
    expect(cover.counts.some((count) => count.sentence.includes('%'))).toBe(true)
  })

  test('says plainly when all, nothing or hardly anything is open, and when there is no room', () => {
    const base = { ...cover.counts[0]!, holes: [] }
    const said = (placements: number, open: number) => coverSentence({ ...base, placements, open }, 'coach')
    expect(said(0, 0)).toBe('There is no room for one X here.')
    expect(said(9, 9)).toBe('Against one X something is always open.')
    expect(said(9, 0)).toBe('Against one X nothing is ever open.')
    expect(said(9, 8)).toBe('Against one X something is open but for a few scattered places.')
  })
})

describe('the map', () => {
  test('has one cell a place, and every cell lies in exactly one region of its own way', () => {
    const regions = coverRegions(cells)
    expect(cells).toHaveLength(cover.places.length)
    expect(new Set(cells.map(({ row, column }) => `${row} ${column}`)).size).toBe(cells.length)
    expect(new Set(regions.flatMap((region) => region.cells)).size).toBe(cells.length)
    expect(regions.flatMap((region) => region.cells)).toHaveLength(cells.length)
    for (const { way, cells: own } of regions) expect(own.every((cell) => cell.way === way)).toBe(true)
  })

  test('hatches each hole once, and draws a border only where neighbours differ', () => {
    const holes = cells.filter(({ way }) => way === null)
    expect(holes.length).toBeGreaterThan(0)
    expect(hatchPath(cells).match(/M/g)).toHaveLength(holes.length)
    expect(borderPath(cells.map((cell) => ({ ...cell, way: 0 })))).toBe('')
    expect(borderPath(cells)).not.toBe('')
  })

  test('every region that is more than a speck has a letter, and none where a ring stands', () => {
    for (const region of coverRegions(cells)) {
      const letters = letterCells(region, 3, () => true)
      if (region.cells.length >= 3) expect(letters.length).toBeGreaterThan(0)
      for (const cell of letters) expect(region.cells).toContain(cell)
      expect(letterCells(region, 3, () => false)).toEqual([])
    }
  })

  test('is said in words for every part of the pitch where X may stand, holes included', () => {
    const words = coverMapInWords(document, cover, space)
    expect(words.length).toBeGreaterThanOrEqual(6)
    expect(words[0]).toMatch(/^X near the own goal, on the left: /)
    expect(words.join(' ')).toContain('holes')
    expect(words.join(' ')).toContain('answer A')
    const everywhereA = { ...cover, places: cover.places.map(({ at }) => ({ at, way: 0 })) }
    for (const sentence of coverMapInWords(document, everywhereA, space)) {
      expect(sentence).toMatch(/: (answer A|step 3 as drawn)\.$/)
    }
  })
})

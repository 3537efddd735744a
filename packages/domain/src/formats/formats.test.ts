import { describe, expect, test } from 'vitest'
import { HABIT, type Sourced } from '../quantities'
import { FORMAT_IDS, type Format } from './format'
import { formatOf, formats } from './formats'

function isSourced(value: unknown): value is Sourced<unknown> {
  return typeof value === 'object' && value !== null && 'kind' in value && 'source' in value && 'value' in value
}

/** Every field that carries a number of the game; the others are names and the list of doubts. */
function sourcedFields(format: Format): readonly (readonly [string, unknown])[] {
  const named = new Set(['formatId', 'name', 'issuer', 'edition', 'doubts'])
  return Object.entries(format).filter(([field, value]) => !named.has(field) && value !== null)
}

describe.each(FORMAT_IDS)('%s', (formatId) => {
  const format = formats[formatId]

  test('is listed under its own id', () => {
    expect(format.formatId).toBe(formatId)
    expect(formatOf(formatId)).toBe(format)
  })

  test('says of every number where it is from', () => {
    const fields = sourcedFields(format)
    expect(fields.length).toBeGreaterThan(15)
    for (const [field, value] of fields) {
      expect(isSourced(value), field).toBe(true)
      if (!isSourced(value)) continue
      expect(value.source.length, field).toBeGreaterThan(10)
      expect(value.source === HABIT, field).toBe(value.kind === 'habit')
      if (value.kind === 'memory') expect(value.source, field).toMatch(/not checked/)
    }
  })

  test('draws a nominal pitch inside its own range, longer than wide', () => {
    const { lengthMm, widthMm } = format.nominal.value
    expect(lengthMm).toBeGreaterThanOrEqual(format.lengthMm.value.minMm)
    expect(lengthMm).toBeLessThanOrEqual(format.lengthMm.value.maxMm)
    expect(widthMm).toBeGreaterThanOrEqual(format.widthMm.value.minMm)
    expect(widthMm).toBeLessThanOrEqual(format.widthMm.value.maxMm)
    expect(lengthMm).toBeGreaterThan(widthMm)
  })

  test('lists formations that add up to its players less the goalkeeper', () => {
    for (const formation of format.formations.value) {
      const outfield = formation.split('-').reduce((sum, line) => sum + Number(line), 0)
      expect(outfield, formation).toBe(format.playersPerSide.value - 1)
    }
  })

  test('nests its areas: goal, goal area, penalty area, smallest pitch', () => {
    const goalArea = format.goalArea?.value
    const penaltyArea = format.penaltyArea?.value
    expect(goalArea?.depthMm).toBeLessThan(penaltyArea?.depthMm ?? 0)
    expect(format.goal.value.widthMm).toBeLessThan(goalArea?.widthMm ?? 0)
    expect(goalArea?.widthMm).toBeLessThan(penaltyArea?.widthMm ?? 0)
    expect(penaltyArea?.widthMm).toBeLessThanOrEqual(format.widthMm.value.minMm)
    expect(penaltyArea?.depthMm).toBeLessThan(format.lengthMm.value.minMm / 2)
  })

  test('raises its doubts about fields that exist', () => {
    for (const doubt of format.doubts) expect(Object.keys(format)).toContain(doubt.about)
  })
})

describe('a club’s choice of the 7v7 penalty mark', () => {
  test.each([
    [8, 7315],
    [10, 9144],
  ] as const)('%i yards is %i mm and is shown as the club’s', (penaltyMarkYards7v7, expected) => {
    const mark = formatOf('us-7v7', { penaltyMarkYards7v7 }).penaltyMarkMm
    expect(mark?.value).toBe(expected)
    expect(mark?.kind).toBe('club')
  })

  test('touches no other format', () => {
    expect(formatOf('us-9v9', { penaltyMarkYards7v7: 8 })).toBe(formats['us-9v9'])
  })
})

test('a club says when opponents may cross the build-out line after a release from the hands; 9v9 has no such line', () => {
  const printed = formatOf('us-7v7', { penaltyMarkYards7v7: 10 }).buildOutCrossing
  expect(printed).toMatchObject({ value: 'released', kind: 'published' })
  const chosen = formatOf('us-7v7', { penaltyMarkYards7v7: 10, buildOutCrossing7v7: 'touched' }).buildOutCrossing
  expect(chosen).toMatchObject({ value: 'touched', kind: 'club' })
  expect(formatOf('us-9v9', { penaltyMarkYards7v7: 10, buildOutCrossing7v7: 'touched' }).buildOutCrossing).toBeNull()
})

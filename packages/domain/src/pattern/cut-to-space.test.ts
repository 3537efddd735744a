import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { checkPattern } from '../check'
import { placerFor } from '../check/places'
import { formatOf } from '../formats'
import { nominalSpace, type Space, spaceRectangle } from '../pitch'
import { millimetres } from '../quantities'
import { cutToSpace } from './cut-to-space'
import type { PatternDocument } from './document'
import { patternArbitrary } from './fixtures/arbitrary-pattern'
import { samplePattern } from './fixtures/sample-pattern'
import { listSpots } from './landmark-rules'
import { mirrorPattern, mirrorPosition } from './mirror'
import { checkShape } from './rules'
import { UNIT_SIZES, unitForm } from './unit-form'

const whole = nominalSpace('us-7v7')

function plain(lengthMetres: number, widthMetres: number): Space {
  return {
    ...whole,
    name: 'corner of the field',
    covers: 'plain',
    lengthMm: millimetres(lengthMetres * 1000),
    widthMm: millimetres(widthMetres * 1000),
    markings: { ...whole.markings, boundary: 'none', 'build-out-line': 'none', halfway: 'none' },
    goals: [],
  }
}

const spaceArbitrary = fc
  .tuple(fc.integer({ min: 12, max: 60 }), fc.integer({ min: 12, max: 60 }), fc.constantFrom('whole', 'half', 'plain'))
  .map(([long, wide, covers]): Space => ({ ...plain(long, wide), covers: covers as Space['covers'] }))

describe('a pattern cut to a space', () => {
  test('stays as it is where everything fits', () => {
    const cut = cutToSpace(samplePattern, whole)
    expect(cut?.document).toEqual(samplePattern)
    expect(cut?.gatesFor).toEqual([])
    expect(cut?.outside).toEqual([])
  })

  test('ends at a gate on the edge where the ball would leave it', () => {
    const short = plain(18, 30)
    const cut = cutToSpace(samplePattern, short)!
    expect(cut.outside.length).toBeGreaterThan(0)
    expect(cut.gatesFor.length).toBeGreaterThan(0)
    const gate = cut.document.targets.at(-1)!
    expect(gate.kind).toBe('gate')
    const at = placerFor(cut.document, short)(gate.spot)
    const { near, far, left, right } = spaceRectangle(short)
    expect(Math.min(at.x - near, far - at.x, at.y - left, right - at.y)).toBeLessThan(0.2)
  })

  test('is nothing where the ball itself would lie outside', () => {
    const far: PatternDocument = {
      ...samplePattern,
      positions: samplePattern.positions.map((each) =>
        each.position === 'GK' ? { ...each, spot: { ...each.spot, upMm: millimetres(-5000) } } : each,
      ),
    }
    expect(cutToSpace(far, whole)).toBeNull()
  })

  test('meets the structural rules, lies on the space and is checked without a note that it does not, whatever the two', () => {
    fc.assert(
      fc.property(patternArbitrary, spaceArbitrary, (pattern, space) => {
        const cut = cutToSpace(pattern, space)
        if (cut === null) return
        expect(checkShape(cut.document)).toEqual([])
        const place = placerFor(cut.document, space)
        const bounds = spaceRectangle(space)
        for (const { spot } of listSpots(cut.document)) {
          const at = place(spot)
          expect(at.x).toBeGreaterThan(bounds.near - 0.01)
          expect(at.x).toBeLessThan(bounds.far + 0.01)
          expect(Math.abs(at.y)).toBeLessThan(bounds.right + 0.01)
        }
        const { notes, timeline } = checkPattern(cut.document, space)
        expect(notes.filter((note) => note.code === 'off-the-space')).toEqual([])
        expect(Number.isFinite(timeline.endsAt)).toBe(true)
      }),
    )
  })

  test('of the mirrored pattern is the mirrored cut', () => {
    fc.assert(
      fc.property(patternArbitrary, spaceArbitrary, (pattern, space) => {
        const cut = cutToSpace(pattern, space)
        const mirrored = cutToSpace(mirrorPattern(pattern), space)
        expect(mirrored?.outside ?? null).toEqual(cut?.outside.map(mirrorPosition) ?? null)
        expect(mirrored?.document.steps.length).toBe(cut?.document.steps.length)
        expect(mirrored?.gatesFor ?? null).toEqual(cut?.gatesFor.map(mirrorPosition) ?? null)
      }),
    )
  })

  test('and the form for a few players go together, in either order the check can play', () => {
    fc.assert(
      fc.property(patternArbitrary, spaceArbitrary, fc.constantFrom(...UNIT_SIZES), (pattern, space, size) => {
        const cut = cutToSpace(unitForm(pattern, size).document, space)
        if (cut === null) return
        expect(checkShape(cut.document)).toEqual([])
        expect(cut.document.positions.length).toBeLessThanOrEqual(
          Math.min(size, formatOf(pattern.formatId).playersPerSide.value),
        )
        expect(Number.isFinite(checkPattern(cut.document, space).timeline.endsAt)).toBe(true)
      }),
    )
  })
})

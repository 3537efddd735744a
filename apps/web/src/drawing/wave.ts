import { directionTo, gapBetween, offset, type PaperPoint, pathPlace } from './paper-point'

/** Metres from the middle of a carry's wave to its crest, and from crest to crest. */
export const WAVE_AMPLITUDE = 0.42
const WAVE_LENGTH = 1.75
const POINTS_A_WAVE = 12

/**
 * Places along a wave from one place to another: a whole number of half waves near the usual length, flat at both ends,
 * so that it leaves the foot and enters its head straight. `unit` stretches the wave on large pitches.
 */
export function wavePlaces(from: PaperPoint, to: PaperPoint, amplitude: number, unit = 1): readonly PaperPoint[] {
  const length = gapBetween(from, to)
  const direction = directionTo(from, to)
  const halfWaves = Math.max(2, Math.round((2 * length) / (WAVE_LENGTH * unit)))
  const count = Math.ceil((halfWaves * POINTS_A_WAVE) / 2)
  return Array.from({ length: count + 1 }, (_, index) => {
    const share = index / count
    const aside = amplitude * taper(share, length) * Math.sin(Math.PI * halfWaves * share)
    return offset(from, direction, share * length, aside)
  })
}

/** Rises from nothing over the first metre and falls to nothing over the last. */
function taper(share: number, length: number): number {
  const nearest = Math.min(share, 1 - share) * length
  return Math.min(1, nearest)
}

export function wavePath(from: PaperPoint, to: PaperPoint, amplitude: number, unit = 1): string {
  return wavePlaces(from, to, amplitude, unit)
    .map((place, index) => `${index === 0 ? 'M' : 'L'}${pathPlace(place)}`)
    .join('')
}

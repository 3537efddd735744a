import { type FormatId, formatOf } from '../formats'
import type { Space } from './space'

/** The whole pitch a pattern is drawn on when no measured space is chosen: the format's nominal size, every line painted. */
export function nominalSpace(formatId: FormatId): Space {
  const format = formatOf(formatId)
  const { widthMm } = format.goal.value
  return {
    name: format.name,
    venue: '',
    lengthMm: format.nominal.value.lengthMm,
    widthMm: format.nominal.value.widthMm,
    covers: 'whole',
    formatId,
    markings: {
      boundary: 'painted',
      'goal-area': format.goalArea === null ? 'none' : 'painted',
      'penalty-area': format.penaltyArea === null ? 'none' : 'painted',
      'penalty-mark': format.penaltyMarkMm === null ? 'none' : 'painted',
      'build-out-line': format.buildOutLine === null ? 'none' : 'painted',
      halfway: 'painted',
      'centre-circle': format.circleRadiusMm === null ? 'none' : 'painted',
    },
    goals: [
      { end: 'own', widthMm, movable: false },
      { end: 'far', widthMm, movable: false },
    ],
  }
}

import { type Format, type FormatChoices, formatOf } from '../formats'
import { type Rectangle, rectangle } from '../geometry'
import { type Metres, type Millimetres, metres, metresOf, type Sourced, unreachable } from '../quantities'
import type { Breadth, Depth } from './landmark-place'
import type { Space } from './space'

/**
 * A space together with the format whose measures its lines follow: areas keep the format's metres near each goal,
 * touchlines and halfway line are the space's own.
 */
export type Measures = { readonly space: Space; readonly format: Format }

export function measuresOf(space: Space, choices?: FormatChoices): Measures {
  return { space, format: formatOf(space.formatId, choices) }
}

/** The space itself, in the pitch frame. */
export function spaceRectangle(space: Space): Rectangle {
  const halfWidth = metresOf(space.widthMm) / 2
  return rectangle(0, metresOf(space.lengthMm), -halfWidth, halfWidth)
}

/** The halfway line's distance from the own goal line: a half ends at it, any other space has it in its middle. */
export function halfwayDistance(space: Space): Metres {
  return metres(metresOf(space.lengthMm) / (space.covers === 'half' ? 1 : 2))
}

function lengthOrNull(sourced: Sourced<Millimetres> | null): Metres | null {
  return sourced === null ? null : metresOf(sourced.value)
}

function penaltyArcTop({ format }: Measures): Metres | null {
  const mark = lengthOrNull(format.penaltyMarkMm)
  const radius = lengthOrNull(format.circleRadiusMm)
  if (mark === null || radius === null || format.penaltyArea === null) return null
  // Only the part outside the penalty area is a line; an arc that stays inside does not exist.
  return mark + radius > metresOf(format.penaltyArea.value.depthMm) ? metres(mark + radius) : null
}

function buildOutDistance({ space, format }: Measures): Metres | null {
  if (format.buildOutLine === null || format.penaltyArea === null) return null
  const top = metresOf(format.penaltyArea.value.depthMm)
  const halfway = halfwayDistance(space)
  return halfway > top ? metres((top + halfway) / 2) : null
}

/** How far a kind of line lies from its goal line; null where the format or the space has no such line. */
export function depthDistance(measures: Measures, depth: Depth): Metres | null {
  const { space, format } = measures
  switch (depth) {
    case 'goal-line':
      return metres(0)
    case 'goal-area':
      return format.goalArea === null ? null : metresOf(format.goalArea.value.depthMm)
    case 'penalty-mark':
      return lengthOrNull(format.penaltyMarkMm)
    case 'penalty-area':
      return format.penaltyArea === null ? null : metresOf(format.penaltyArea.value.depthMm)
    case 'penalty-arc':
      return penaltyArcTop(measures)
    case 'build-out-line':
      return buildOutDistance(measures)
    case 'halfway':
      return halfwayDistance(space)
    default:
      return unreachable(depth)
  }
}

/** Between the posts: of the goal that stands there, else of the format's. */
export function goalWidth({ space, format }: Measures, end: 'own' | 'far'): Metres {
  const found = space.goals.find((goal) => goal.end === end)
  return metresOf(found === undefined ? format.goal.value.widthMm : found.widthMm)
}

/** How far a kind of line lies from the middle of the pitch, to either side. */
export function breadthDistance(measures: Measures, breadth: Breadth, end: 'own' | 'far'): Metres | null {
  const { space, format } = measures
  switch (breadth) {
    case 'axis':
      return metres(0)
    case 'goal':
      return metres(goalWidth(measures, end) / 2)
    case 'goal-area':
      return format.goalArea === null ? null : metres(metresOf(format.goalArea.value.widthMm) / 2)
    case 'penalty-area':
      return format.penaltyArea === null ? null : metres(metresOf(format.penaltyArea.value.widthMm) / 2)
    case 'touchline':
      return metres(metresOf(space.widthMm) / 2)
    default:
      return unreachable(breadth)
  }
}

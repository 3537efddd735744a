import type { FormatId } from '../formats'
import type { Millimetres } from '../quantities'

/** How a line or corner shows on the ground. */
export const FINDINGS = ['painted', 'flags', 'none'] as const
export type Finding = (typeof FINDINGS)[number]

export const MARKINGS = [
  'boundary',
  'goal-area',
  'penalty-area',
  'penalty-mark',
  'build-out-line',
  'halfway',
  'centre-circle',
] as const
export type Marking = (typeof MARKINGS)[number]

export type GoalFound = {
  readonly end: 'own' | 'far'
  readonly widthMm: Millimetres
  readonly movable: boolean
}

/**
 * A practice space as a person with a tape found it: any rectangle, also wider than long.
 * Length runs up the pitch as the team attacks; a half pitch is the half the team builds out from.
 */
export type Space = {
  readonly name: string
  readonly venue: string
  readonly lengthMm: Millimetres
  readonly widthMm: Millimetres
  /** whole: a full pitch; half: own half of one; plain: a rectangle that is no part of a marked pitch. */
  readonly covers: 'whole' | 'half' | 'plain'
  /** Whose measures its lines follow, and the format it is checked against. */
  readonly formatId: FormatId
  readonly markings: Readonly<Record<Marking, Finding>>
  readonly goals: readonly GoalFound[]
}

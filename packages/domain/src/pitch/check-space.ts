import { type Format, formatOf, type Range } from '../formats'
import { type Millimetres, millimetres, type Sourced, type SourceKind } from '../quantities'
import { halfwayDistance } from './measures'
import type { Space } from './space'

export const SPACE_NOTE_CODES = [
  'shorter-than-format',
  'longer-than-format',
  'narrower-than-format',
  'wider-than-format',
  'wider-than-long',
  'penalty-area-does-not-fit',
  'build-out-line-does-not-fit',
  'goal-wider-than-format',
  'goal-wider-than-space',
  'no-own-goal',
  'goal-movable',
] as const
export type SpaceNoteCode = (typeof SPACE_NOTE_CODES)[number]

/** Something worth knowing about a space; never a refusal, a coach plays where the club has room. */
export type SpaceNote = {
  readonly code: SpaceNoteCode
  readonly sentence: string
  /** What was measured, and what it was held against; null where the note is not about a length. */
  readonly valueMm: Millimetres | null
  readonly limitMm: Millimetres | null
  readonly kind: SourceKind
  readonly source: string
}

const MOVABLE_GOAL = 'U.S. CPSC, Guidelines for Movable Soccer Goal Safety, 1995'

function inMetres(length: Millimetres): string {
  return `${(length / 1000).toFixed(1)} m`
}

type RangeCodes = { readonly below: SpaceNoteCode; readonly above: SpaceNoteCode }

function rangeNotes(what: string, value: Millimetres, range: Sourced<Range>, codes: RangeCodes): readonly SpaceNote[] {
  const { minMm, maxMm } = range.value
  const from = { valueMm: value, kind: range.kind, source: range.source }
  if (value < minMm) {
    const sentence = `${what} is ${inMetres(value)}; the format asks for at least ${inMetres(minMm)}.`
    return [{ code: codes.below, sentence, limitMm: minMm, ...from }]
  }
  if (value > maxMm) {
    const sentence = `${what} is ${inMetres(value)}; the format allows at most ${inMetres(maxMm)}.`
    return [{ code: codes.above, sentence, limitMm: maxMm, ...from }]
  }
  return []
}

/** A plain rectangle is no match pitch, so it is held against no range; a half is half of one. */
function sizeNotes(space: Space, format: Format): readonly SpaceNote[] {
  if (space.covers === 'plain') return []
  const isHalf = space.covers === 'half'
  const length = isHalf ? millimetres(space.lengthMm * 2) : space.lengthMm
  return [
    ...rangeNotes(isHalf ? 'The length of the pitch this is half of' : 'The length', length, format.lengthMm, {
      below: 'shorter-than-format',
      above: 'longer-than-format',
    }),
    ...rangeNotes('The width', space.widthMm, format.widthMm, {
      below: 'narrower-than-format',
      above: 'wider-than-format',
    }),
  ]
}

function shapeNotes(space: Space): readonly SpaceNote[] {
  if (space.widthMm <= space.lengthMm) return []
  const sides = `The space is wider (${inMetres(space.widthMm)}) than long (${inMetres(space.lengthMm)})`
  const lengths = { code: 'wider-than-long', valueMm: space.widthMm, limitMm: space.lengthMm } as const
  return space.covers === 'whole'
    ? [
        {
          ...lengths,
          sentence: `${sides}; on a match pitch the touchlines are the longer ones.`,
          kind: 'published',
          source: 'IFAB Laws of the Game, Law 1 The Field of Play, Dimensions',
        },
      ]
    : [
        {
          ...lengths,
          sentence: `${sides}; play runs the short way here.`,
          kind: 'computed',
          source: 'from the measured length and width',
        },
      ]
}

function areaNotes(space: Space, format: Format): readonly SpaceNote[] {
  const area = format.penaltyArea
  if (area === null) return []
  const { depthMm, widthMm } = area.value
  const from = { kind: area.kind, source: area.source }
  if (widthMm > space.widthMm) {
    const sentence = `The format's penalty area, ${inMetres(widthMm)} wide, is wider than this space.`
    return [{ code: 'penalty-area-does-not-fit', sentence, valueMm: space.widthMm, limitMm: widthMm, ...from }]
  }
  const room = millimetres(Math.round(halfwayDistance(space) * 1000))
  if (space.covers !== 'plain' && room <= depthMm && format.buildOutLine !== null) {
    const sentence = 'There is no room for a build-out line between the penalty area and the halfway line.'
    return [{ code: 'build-out-line-does-not-fit', sentence, valueMm: room, limitMm: depthMm, ...from }]
  }
  if (depthMm > space.lengthMm) {
    const sentence = `The format's penalty area, ${inMetres(depthMm)} deep, is deeper than this space is long.`
    return [{ code: 'penalty-area-does-not-fit', sentence, valueMm: space.lengthMm, limitMm: depthMm, ...from }]
  }
  return []
}

function goalNotes(space: Space, format: Format): readonly SpaceNote[] {
  const largest = format.goal
  const notes: SpaceNote[] = []
  if (!space.goals.some((goal) => goal.end === 'own')) {
    notes.push({
      code: 'no-own-goal',
      sentence: 'There is no goal at your own end: put a bag down as its middle.',
      valueMm: null,
      limitMm: null,
      kind: 'computed',
      source: 'from the goals found',
    })
  }
  for (const goal of space.goals) {
    const measured = { valueMm: goal.widthMm }
    const which = goal.end === 'own' ? 'Your own goal' : 'The far goal'
    if (goal.widthMm > largest.value.widthMm) {
      const sentence = `${which} is ${inMetres(goal.widthMm)} wide; the format allows ${inMetres(largest.value.widthMm)}.`
      const limit = { limitMm: largest.value.widthMm, kind: largest.kind, source: largest.source }
      notes.push({ code: 'goal-wider-than-format', sentence, ...measured, ...limit })
    }
    if (goal.widthMm > space.widthMm) {
      const sentence = `${which} is wider than the space: measure both again.`
      const limit = { limitMm: space.widthMm, kind: 'computed', source: 'from the measured widths' } as const
      notes.push({ code: 'goal-wider-than-space', sentence, ...measured, ...limit })
    }
  }
  if (space.goals.some((goal) => goal.movable)) {
    notes.push({
      code: 'goal-movable',
      sentence:
        'A goal here can be moved: anchor it or weigh it down before anyone plays, and let nobody climb or hang on it. Your club’s and local rules decide.',
      valueMm: null,
      limitMm: null,
      kind: 'published',
      source: MOVABLE_GOAL,
    })
  }
  return notes
}

/** What a measured space is like for its format, in a fixed order. */
export function checkSpace(space: Space): readonly SpaceNote[] {
  const format = formatOf(space.formatId)
  return [...sizeNotes(space, format), ...shapeNotes(space), ...areaNotes(space, format), ...goalNotes(space, format)]
}

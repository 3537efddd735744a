import { type Format, formatOf, type Range } from '../formats'
import { type Millimetres, millimetres, millimetresOf, type Sourced } from '../quantities'
import { goalNotes } from './goal-notes'
import { halfwayDistance } from './measures'
import type { Space } from './space'
import { inMetres, type SpaceNote, type SpaceNoteCode } from './space-note'

/** What a measured space is like for its format, in a fixed order. */
export function checkSpace(space: Space): readonly SpaceNote[] {
  const format = formatOf(space.formatId)
  return [...sizeNotes(space, format), ...shapeNotes(space), ...areaNotes(space, format), ...goalNotes(space, format)]
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

/** Whether the format's areas have room here; the areas keep their measures, so a small space cuts them off. */
function areaNotes(space: Space, format: Format): readonly SpaceNote[] {
  const area = format.penaltyArea
  if (area === null) return []
  const { depthMm, widthMm } = area.value
  const from = { kind: area.kind, source: area.source }
  const notes: SpaceNote[] = []
  if (widthMm > space.widthMm) {
    const sentence = `The format’s penalty area, ${inMetres(widthMm)} wide, is wider than this space.`
    notes.push({ code: 'penalty-area-does-not-fit', sentence, valueMm: space.widthMm, limitMm: widthMm, ...from })
  }
  if (depthMm > space.lengthMm) {
    const sentence = `The format’s penalty area, ${inMetres(depthMm)} deep, is deeper than this space is long.`
    notes.push({ code: 'penalty-area-does-not-fit', sentence, valueMm: space.lengthMm, limitMm: depthMm, ...from })
  }
  const halfway = millimetresOf(halfwayDistance(space))
  if (format.buildOutLine !== null && space.covers !== 'plain' && halfway <= depthMm) {
    const sentence = 'There is no room for a build-out line between the penalty area and the halfway line.'
    notes.push({ code: 'build-out-line-does-not-fit', sentence, valueMm: halfway, limitMm: depthMm, ...from })
  }
  return notes
}

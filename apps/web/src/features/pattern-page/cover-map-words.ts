import type { CoverWay, LookCover } from '@espalier/domain/check'
import type { PatternDocument } from '@espalier/domain/pattern'
import type { Space } from '@espalier/domain/pitch'
import { metresOf } from '@espalier/domain/quantities'
import { patternsMessage } from '../../messages/patterns'
import { stepNumber } from './cover-words'

const PARTS = ['mapPartOwn', 'mapPartMiddle', 'mapPartTheir'] as const
const SIDES = ['mapSideLeft', 'mapSideCentre', 'mapSideRight'] as const

/** The map as sentences: for each third of the pitch and each side, what is best when X stands there. */
export function coverMapInWords(document: PatternDocument, cover: LookCover, space: Space): readonly string[] {
  const third = (share: number) => Math.min(2, Math.max(0, Math.floor(share * 3)))
  const length = metresOf(space.lengthMm)
  const width = metresOf(space.widthMm)
  return PARTS.flatMap((part, up) =>
    SIDES.flatMap((side, right) => {
      const here = cover.places.filter(({ at }) => third(at.x / length) === up && third(at.y / width + 0.5) === right)
      if (here.length === 0) return []
      const where = `${patternsMessage(part)}, ${patternsMessage(side)}`
      return [patternsMessage('mapPart', { part: where, ways: waysHere(document, cover, here) })]
    }),
  )
}

function waysHere(document: PatternDocument, cover: LookCover, here: LookCover['places']): string {
  const counts = new Map<number | null, number>()
  for (const { way } of here) counts.set(way, (counts.get(way) ?? 0) + 1)
  const [most, ...others] = [...counts]
    .sort(([, one], [, other]) => other - one)
    .map(([way]) => sayWay(document, cover, way === null ? null : (cover.ways[way] ?? null)))
  if (most === undefined) return ''
  if (others.length === 0) return most
  return [patternsMessage('mapMostly', { way: most }), patternsMessage('mapAlso', { ways: others.join(', ') })].join(
    ', ',
  )
}

function sayWay(document: PatternDocument, { stepId }: LookCover, way: CoverWay | null): string {
  if (way === null) return patternsMessage('mapWayHole')
  if (way.letter !== null) return patternsMessage('mapWayAnswer', { letter: way.letter })
  return patternsMessage('mapWayDrawn', { number: stepNumber(document, stepId) })
}

/** What stands on the map for a way: its letter, or the number of the step that is played as drawn. */
export function wayMark(document: PatternDocument, { stepId }: LookCover, way: CoverWay): string {
  return way.letter ?? String(stepNumber(document, stepId))
}

import type { Equipment, EquipmentKind } from './kit'
import { EQUIPMENT_KINDS } from './kit'
import { countOf, EQUIPMENT_WORDS, planNote } from './notes'
import type { EquipmentSubstitute, PlanNote, SetOutStop } from './plan'

export type CountedEquipment = {
  readonly needed: Equipment
  readonly short: Equipment
  readonly substitutes: readonly EquipmentSubstitute[]
  /** The stops with what stands in, and with a bib in the middle of long legs as far as there are bibs. */
  readonly stops: readonly SetOutStop[]
  readonly notes: readonly PlanNote[]
}

/** A small goal is marked by two cones, its posts. */
const CONES_FOR_A_GOAL = 2

/**
 * What the evening needs against what there is. Cones stand in for poles and goals, then bibs for cones, on the corners of
 * rondos first and from the end of the walk; bibs that teams wear stay with the teams. What is missing even so is said.
 */
export function countEquipment(
  stops: readonly SetOutStop[],
  teamBibs: number,
  balls: number,
  there: Equipment,
  rondoIds: ReadonlySet<string>,
): CountedEquipment {
  const ofKind = (kind: EquipmentKind) => stops.filter((stop) => stop.item === kind).length
  const longLegs = stops.flatMap((stop) => stop.legs).filter((leg) => leg.bibAfterPaces !== null).length
  const needed: Equipment = {
    cone: ofKind('cone'),
    pole: ofKind('pole'),
    'small-goal': ofKind('small-goal'),
    ball: balls,
    bib: Math.max(teamBibs, longLegs),
  }
  const short = shortOf(needed, there)
  const conesWanted = needed.cone + short.pole + CONES_FOR_A_GOAL * short['small-goal']
  const conesShort = Math.max(0, conesWanted - there.cone)
  const bibsForCones = Math.min(conesShort, needed.cone, Math.max(0, there.bib - teamBibs))
  const substitutes = [
    { item: 'small-goal', instead: 'cone', count: short['small-goal'] },
    { item: 'pole', instead: 'cone', count: short.pole },
    { item: 'cone', instead: 'bib', count: bibsForCones },
  ] as const
  const used = substitutes.filter((each) => each.count > 0)
  const replaced = used.reduce((all, each) => replaceStops(all, each, rondoIds), stops)
  return {
    needed,
    short,
    substitutes: used,
    stops: dropBibs(replaced, Math.max(0, there.bib - bibsForCones)),
    notes: notesOf(used, conesShort - bibsForCones, Math.max(0, teamBibs - there.bib)),
  }
}

function shortOf(needed: Equipment, there: Equipment): Equipment {
  const short = EQUIPMENT_KINDS.map((kind) => [kind, Math.max(0, needed[kind] - there[kind])] as const)
  return Object.fromEntries(short) as Equipment
}

/** Corners of rondos go first, then the end of the walk: what is set out last is missed least. */
function replaceStops(
  stops: readonly SetOutStop[],
  substitute: EquipmentSubstitute,
  rondoIds: ReadonlySet<string>,
): readonly SetOutStop[] {
  const isRondoOnly = (stop: SetOutStop) => (stop.activityIds.every((id) => rondoIds.has(id)) ? 0 : 1)
  const chosen = stops
    .filter((stop) => stop.item === substitute.item)
    .toSorted((a, b) => isRondoOnly(a) - isRondoOnly(b) || b.number - a.number)
    .slice(0, substitute.count)
  return stops.map((stop) => (chosen.includes(stop) ? { ...stop, instead: substitute.instead } : stop))
}

/** Bibs for the middles of long legs, in walking order, until none is left; they are picked up before the teams need them. */
function dropBibs(stops: readonly SetOutStop[], bibs: number): readonly SetOutStop[] {
  let left = bibs
  return stops.map((stop) => {
    const legs = stop.legs.map((leg) => {
      if (leg.bibAfterPaces === null) return leg
      left -= 1
      return left >= 0 ? leg : { ...leg, bibAfterPaces: null }
    })
    return { ...stop, legs }
  })
}

function notesOf(used: readonly EquipmentSubstitute[], conesShort: number, bibsShort: number): readonly PlanNote[] {
  return [
    ...used.map(({ item, instead, count }) =>
      planNote('equipment-instead', countOf(count, item), insteadWords(item, instead)),
    ),
    ...(conesShort > 0 ? [planNote('equipment-short', countOf(conesShort, 'cone'))] : []),
    ...(bibsShort > 0 ? [planNote('bibs-short', countOf(bibsShort, 'bib'))] : []),
  ]
}

function insteadWords(item: EquipmentKind, instead: EquipmentKind): string {
  return item === 'small-goal' ? 'two cones for each' : EQUIPMENT_WORDS[instead].many
}

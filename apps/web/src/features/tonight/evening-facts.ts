import { type Millimetres, millimetres } from '@espalier/domain/quantities'
import type { EveningFacts, Kit, KitDate } from '@espalier/domain/session'
import { type Evening, turnoutOf } from './evening'

/** One step of an ordinary adult, until the coach says otherwise: 80 cm, common practice, no source. */
export const USUAL_PACE_MM = 800
export const PACE_CHOICES_MM = [600, 650, 700, 750, 800, 850, 900, 950, 1000] as const

/** Everything the planner needs; null where the club has measured no space yet, so nothing can be set out. */
export function eveningFacts(kit: Kit, date: KitDate, evening: Evening, paceMm: number): EveningFacts | null {
  const named = kit.spaces.find((each) => each.spaceId === evening.spaceId)
  const space = (named ?? kit.spaces[0])?.space
  if (space === undefined) return null
  return { kit, date, turnout: turnoutOf(evening, kit), space, paceMm: millimetres(paceMm) as Millimetres }
}

/**
 * What a plan was made from, as text: equal facts, equal text. The server keeps its hash beside the plan; names are no part
 * of it, since a plan is made from ids, nor are guests' initials, which a hash of so few letters would not hide.
 */
export function inputsText({ kit, date, turnout, space, paceMm }: EveningFacts): string {
  const squad = kit.squad.map(({ shortName: _, ...rest }) => rest)
  return JSON.stringify({
    version: kit.adopted?.contentHash ?? null,
    date: { id: date.dateId, minutes: date.minutes },
    ageGroup: kit.team.ageGroup,
    turnout: { ...turnout, guests: turnout.guests.length },
    space,
    paceMm,
    squad,
    equipment: kit.equipment,
    progress: kit.progress,
  })
}

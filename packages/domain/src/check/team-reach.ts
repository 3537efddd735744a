import type { Metres, Sourced } from '../quantities'
import { metres, ok, type Result, refuse } from '../quantities'

/**
 * How far a team's passes along the ground find a team-mate: the distance at which seven of ten children hit a gate of three
 * metres, with the foot each prefers and with the other. A number of the team; no child's result is kept anywhere.
 */
export type TeamReach = { readonly strongFoot: Sourced<Metres>; readonly otherFoot: Sourced<Metres> }

/** What a coach needs to measure a team's reach; the page shows it word for word. */
export const TEAM_REACH_CHECK: readonly string[] = [
  'Five minutes, one ball each, no names written down.',
  'Put two cones three metres apart: that is the gate.',
  'Ten children stand eight metres away. Each passes once along the ground, from a ball that lies still.',
  'Seven or more through the gate: go two metres back and pass again. Fewer: two metres nearer.',
  'The longest distance at which seven of ten hit is the reach. Write down that one number.',
  'Do the same with the other foot. With fewer than ten children some pass twice until ten passes are counted.',
]

/** A reach no coach can have measured is a slip of the pen, such as centimetres. */
const REACH_METRES_MAX = 60

export type TeamReachRefusal = { readonly code: 'reach-out-of-range'; readonly mostMetres: number }

/** A reach as a coach measured it. The other foot never reaches further than the strong one, whichever was written first. */
export function teamReachOf(oneFootMetres: number, otherFootMetres: number): Result<TeamReach, TeamReachRefusal> {
  const canBe = (length: number) => length > 0 && length <= REACH_METRES_MAX
  if (!canBe(oneFootMetres) || !canBe(otherFootMetres)) {
    return refuse({ code: 'reach-out-of-range', mostMetres: REACH_METRES_MAX })
  }
  return ok({
    strongFoot: measured(Math.max(oneFootMetres, otherFootMetres), 'strong foot'),
    otherFoot: measured(Math.min(oneFootMetres, otherFootMetres), 'other foot'),
  })
}

function measured(length: number, foot: string): Sourced<Metres> {
  return {
    value: metres(length),
    kind: 'club',
    source: `measured with this team: seven of ten hit a 3 m gate, ${foot}`,
  }
}

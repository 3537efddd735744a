import { add, distance, type Point, scale } from '../../geometry'
import { type MetresPerSecond, type Seconds, seconds } from '../../quantities'

/** A player as the arrival-time papers see one: a place and a velocity in metres a second along the two axes of the pitch. */
export type MovingPlayer = { readonly at: Point; readonly velocity: Point }

/** Parameters of the arrival-time model, together: none of them means anything outside it. */
export type ArrivalModel = {
  /**
   * How long a player runs on as before. It stands for reacting, turning and getting up to speed in one, so it is no reaction
   * time and is never combined with a phase of acceleration.
   */
  readonly runOn: Seconds
  readonly topSpeed: MetresPerSecond
  /** Spread of the arrival, in seconds. */
  readonly spread: Seconds
  /** How fast a player who is there takes control, a second. */
  readonly controlRate: number
}

/** Runs on with the present velocity, then straight at top speed: r' = r + v·t, and t + |target − r'|/top. */
export function timeToIntercept(player: MovingPlayer, target: Point, model: ArrivalModel): Seconds {
  const after = add(player.at, scale(player.velocity, model.runOn))
  return seconds(model.runOn + distance(after, target) / model.topSpeed)
}

/** Chance that a player has arrived by a time: a logistic of the given spread round the time to intercept. */
export function chanceOfArrival(at: Seconds, intercept: Seconds, { spread }: ArrivalModel): number {
  return 1 / (1 + Math.exp((-Math.PI * (at - intercept)) / (Math.sqrt(3) * spread)))
}

/** How much earlier than the other side a side must arrive for the rest to count as certain: 3·ln 10·(√3·σ/π + 1/λ). */
export function certainLead({ spread, controlRate }: ArrivalModel): Seconds {
  return seconds(3 * Math.LN10 * ((Math.sqrt(3) * spread) / Math.PI + 1 / controlRate))
}

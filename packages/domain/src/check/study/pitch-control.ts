import { assert, type Seconds, seconds } from '../../quantities'
import { type ArrivalModel, chanceOfArrival } from './time-to-intercept'

export type Shares = { readonly attackers: number; readonly defenders: number }

/** A player at a place: when they get there, and how many times as fast as the model's rate they take control. */
export type Contender = { readonly intercept: Seconds; readonly rateFactor: number }

/** The integral stops when this much is still nobody's, or after this long. */
const LEFT_OVER = 1e-7
const LONGEST_SECONDS = 120

/**
 * Who will control a ball at a place, from its arrival on: dP_j/dT = (1 − ΣP)·f_j(T)·λ_j for every player. Fourth-order
 * Runge–Kutta with steps a hundred times finer than the spread, so that halving them changes nothing shown.
 */
export function pitchControl(
  attackers: readonly Contender[],
  defenders: readonly Contender[],
  ballArrives: Seconds,
  model: ArrivalModel,
): Shares {
  assert(attackers.length + defenders.length > 0, 'somebody must contend for the ball')
  const step = model.spread / 100
  let at: number = ballArrives
  let shares: Shares = { attackers: 0, defenders: 0 }
  while (1 - shares.attackers - shares.defenders > LEFT_OVER && at - ballArrives < LONGEST_SECONDS) {
    shares = advance(shares, (time) => rates(attackers, defenders, time, model), at, step)
    at += step
  }
  return shares
}

/**
 * The same by the steps published code takes: Euler of 0.04 s, stopped once 99 % is shared. Kept beside the exact integral
 * to say how far printed maps are from it.
 */
export function pitchControlInSteps(
  attackers: readonly Contender[],
  defenders: readonly Contender[],
  ballArrives: Seconds,
  model: ArrivalModel,
  step: Seconds = seconds(0.04),
): Shares {
  let shares: Shares = { attackers: 0, defenders: 0 }
  for (let index = 0; shares.attackers + shares.defenders < 0.99 && index * step < LONGEST_SECONDS; index += 1) {
    const { own, other } = rates(attackers, defenders, ballArrives + index * step, model)
    const open = 1 - shares.attackers - shares.defenders
    shares = {
      attackers: shares.attackers + open * own * step,
      defenders: shares.defenders + open * other * step,
    }
  }
  return shares
}

type Rates = { readonly own: number; readonly other: number }

function rates(
  attackers: readonly Contender[],
  defenders: readonly Contender[],
  time: number,
  model: ArrivalModel,
): Rates {
  const sum = (side: readonly Contender[]) =>
    side.reduce(
      (total, { intercept, rateFactor }) =>
        total + chanceOfArrival(seconds(time), intercept, model) * model.controlRate * rateFactor,
      0,
    )
  return { own: sum(attackers), other: sum(defenders) }
}

function advance(shares: Shares, ratesAt: (time: number) => Rates, at: number, step: number): Shares {
  const slope = (now: Shares, { own, other }: Rates): Shares => {
    const open = 1 - now.attackers - now.defenders
    return { attackers: open * own, defenders: open * other }
  }
  const moved = (by: Shares, share: number): Shares => ({
    attackers: shares.attackers + by.attackers * share,
    defenders: shares.defenders + by.defenders * share,
  })
  const middle = ratesAt(at + step / 2)
  const first = slope(shares, ratesAt(at))
  const second = slope(moved(first, step / 2), middle)
  const third = slope(moved(second, step / 2), middle)
  const fourth = slope(moved(third, step), ratesAt(at + step))
  const mean = (of: keyof Shares) => (first[of] + 2 * second[of] + 2 * third[of] + fourth[of]) / 6
  return {
    attackers: shares.attackers + mean('attackers') * step,
    defenders: shares.defenders + mean('defenders') * step,
  }
}

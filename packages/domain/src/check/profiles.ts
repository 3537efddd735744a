import type { Metres, MetresPerSecond, MetresPerSecondSquared, Seconds, Sourced } from '../quantities'
import { habit, metres, metresPerSecond, metresPerSecondSquared, seconds } from '../quantities'
import { PROFILE_IDS, type ProfileId } from './profile-names'

export { PROFILE_IDS, type ProfileId } from './profile-names'

/** What players of an age can do, the same for girls and boys: no paper read here gives cause to part them below U13. */
export type AgeProfile = {
  readonly profileId: ProfileId
  readonly topSpeed: Sourced<MetresPerSecond>
  readonly acceleration: Sourced<MetresPerSecondSquared>
  /** From a cue to the first step. */
  readonly reaction: Sourced<Seconds>
  /** From the ball at the feet to the next ball, with a look and a turn: two touches. */
  readonly receiveTurnLook: Sourced<Seconds>
  /** A first touch into a carry or a shot. */
  readonly firstTouch: Sourced<Seconds>
  /** A ball played as it comes, or played out of a carry. */
  readonly oneTouch: Sourced<Seconds>
  /** Speed with the ball at the feet. */
  readonly carrySpeed: Sourced<MetresPerSecond>
  /** How fast a ball to feet should arrive to be taken cleanly. */
  readonly arrivalSpeed: Sourced<MetresPerSecond>
  /** How fast a ball into space should still roll where it is met. */
  readonly arrivalSpeedIntoSpace: Sourced<MetresPerSecond>
  /** Hardest kick; no pass leaves the foot faster. */
  readonly kickSpeedMax: Sourced<MetresPerSecond>
  /** A goalkeeper's throw. */
  readonly throwSpeedMax: Sourced<MetresPerSecond>
  /** A pass on the ground most of this age play to a team-mate; the team reach measured on the field replaces it. */
  readonly passLengthMax: Sourced<Metres>
  /** How far an opponent's leg reaches without a step. */
  readonly reach: Sourced<Metres>
}

/** The age profile for a name such as U10; younger than the table takes its youngest, anything else the adult's. */
export function profileFor(ageGroup: string): AgeProfile {
  const age = /^U(\d{1,2})$/u.exec(ageGroup.trim())?.[1]
  if (age === undefined || Number(age) > 19) return AGE_PROFILES.adult
  const name = `U${Math.max(8, Number(age))}`
  return AGE_PROFILES[PROFILE_IDS.find((each) => each === name) ?? 'adult']
}

const REACTION =
  'Developmental Medicine & Child Neurology 1984;26:490–494: 465 ms at 5 years, 190 ms at 15, straight on log scales; ages between computed'

/** Simple reaction to a sound by age in years: a power law through the two ends the paper gives. */
export function reactionAtAge(years: number): Seconds {
  const exponent = Math.log(190 / 465) / Math.log(15 / 5)
  return seconds(Math.round(465 * (years / 5) ** exponent) / 1000)
}

const SPRINT = 'Harley et al. 2010, Journal of Sports Sciences 28(13), flying 10 m of academy boys'
const SPRINT_BETWEEN = `computed: midway between U12 and U14 of ${SPRINT}`
const KICK = 'Vieira et al. 2018, Research Quarterly for Exercise and Sport 89(2), 210–220, hardest kick at U11'

/** Columns of the table below: one row an age, every figure still with its source. */
type Row = {
  readonly top: Sourced<number>
  readonly kick: Sourced<number>
  /** Habits: acceleration, receive–turn–look, first touch, one touch, arrival to feet, into space, throw, pass length, reach. */
  readonly habits: readonly [number, number, number, number, number, number, number, number, number]
  /** The age reaction is read at: the paper ends at 15 years, so nobody is taken to react faster than that. */
  readonly age: number
}

const ROWS = {
  U8: { age: 8, top: habit(4.8), kick: habit(10.5), habits: [2.5, 1.8, 0.9, 0.4, 3, 2, 7, 8, 0.5] },
  U9: { age: 9, top: habit(5.1), kick: habit(11.5), habits: [2.6, 1.6, 0.8, 0.4, 3.2, 2, 8, 10, 0.5] },
  U10: { age: 10, top: habit(5.4), kick: habit(12.5), habits: [2.8, 1.4, 0.7, 0.35, 3.5, 2.2, 9, 12, 0.6] },
  U11: { age: 11, top: habit(5.8), kick: study(13.483, KICK), habits: [3, 1.3, 0.7, 0.35, 3.8, 2.3, 10, 15, 0.6] },
  U12: { age: 12, top: study(6.329, SPRINT), kick: habit(14.5), habits: [3.2, 1.2, 0.6, 0.3, 4, 2.5, 11, 18, 0.7] },
  U13: {
    age: 13,
    top: { value: 6.476, kind: 'computed', source: SPRINT_BETWEEN },
    kick: habit(17),
    habits: [3.3, 1.1, 0.6, 0.3, 4.3, 2.7, 12, 21, 0.7],
  },
  U14: { age: 14, top: study(6.623, SPRINT), kick: habit(19), habits: [3.5, 1, 0.5, 0.3, 4.5, 3, 13, 25, 0.8] },
  U15: { age: 15, top: study(7.407, SPRINT), kick: habit(20.5), habits: [3.6, 0.96, 0.5, 0.3, 4.8, 3.1, 14, 28, 0.8] },
  U16: { age: 15, top: habit(7.53), kick: habit(21.5), habits: [3.7, 0.92, 0.5, 0.28, 5, 3.2, 14.5, 31, 0.85] },
  U17: { age: 15, top: habit(7.65), kick: habit(22.5), habits: [3.8, 0.89, 0.5, 0.28, 5.3, 3.3, 15, 34, 0.85] },
  U18: { age: 15, top: habit(7.77), kick: habit(23.5), habits: [3.9, 0.86, 0.5, 0.26, 5.6, 3.4, 16, 36, 0.9] },
  U19: { age: 15, top: habit(7.88), kick: habit(24.3), habits: [3.95, 0.83, 0.5, 0.25, 5.8, 3.5, 16.5, 38, 0.9] },
  adult: { age: 15, top: habit(8), kick: habit(25), habits: [4, 0.8, 0.5, 0.25, 6, 3.5, 17, 40, 0.9] },
} as const satisfies Record<ProfileId, Row>

/** A player with the ball runs at about seven tenths of the speed without it (habit). */
const CARRY_SHARE = 0.7

export const AGE_PROFILES: Readonly<Record<ProfileId, AgeProfile>> = {
  U8: profileOf('U8'),
  U9: profileOf('U9'),
  U10: profileOf('U10'),
  U11: profileOf('U11'),
  U12: profileOf('U12'),
  U13: profileOf('U13'),
  U14: profileOf('U14'),
  U15: profileOf('U15'),
  U16: profileOf('U16'),
  U17: profileOf('U17'),
  U18: profileOf('U18'),
  U19: profileOf('U19'),
  adult: profileOf('adult'),
}

function profileOf(profileId: ProfileId): AgeProfile {
  const { top, kick, age, habits } = ROWS[profileId]
  const [acceleration, receive, first, one, arrival, intoSpace, throwSpeed, passLength, reach] = habits
  return {
    profileId,
    topSpeed: { ...top, value: metresPerSecond(top.value) },
    acceleration: habit(metresPerSecondSquared(acceleration)),
    reaction: { value: reactionAtAge(age), kind: 'study', source: REACTION },
    receiveTurnLook: habit(seconds(receive)),
    firstTouch: habit(seconds(first)),
    oneTouch: habit(seconds(one)),
    carrySpeed: habit(metresPerSecond(Math.round(top.value * CARRY_SHARE * 1000) / 1000)),
    arrivalSpeed: habit(metresPerSecond(arrival)),
    arrivalSpeedIntoSpace: habit(metresPerSecond(intoSpace)),
    kickSpeedMax: { ...kick, value: metresPerSecond(kick.value) },
    throwSpeedMax: habit(metresPerSecond(throwSpeed)),
    passLengthMax: habit(metres(passLength)),
    reach: habit(metres(reach)),
  }
}

function study(value: number, source: string): Sourced<number> {
  return { value, kind: 'study', source }
}

import { habit, type Metres, metres, type Sourced } from '../../quantities'
import { AGE_PROFILES, type AgeProfile, PROFILE_IDS, type ProfileId } from '../profiles'

/**
 * How far players of an age are off, as standard deviations of normal errors. Only for comparing two patterns: nobody
 * measured these on children, so no count of runs got out says how often a team will.
 */
export type ErrorProfile = {
  readonly profileId: ProfileId
  /** Of the direction of a pass, in degrees. */
  readonly directionDegrees: Sourced<number>
  /** Of the speed of a pass, as a share of the speed meant. */
  readonly speedShare: Sourced<number>
  /**
   * How far a first touch lets the ball off, along its way and across it, for a ball that arrives as fast as the age takes
   * cleanly; a ball twice as fast goes twice as far.
   */
  readonly touchMetres: Sourced<Metres>
  /** Of the reaction, as a share of it. */
  readonly reactionShare: Sourced<number>
  /** Direction and speed of a ball played as it comes err by so many times as much. */
  readonly oneTouchTimes: Sourced<number>
  /** The same for a ball thrown or rolled by hand. */
  readonly handsTimes: Sourced<number>
  /** The step, besides the leg, with which a ball beside its place is still met. */
  readonly stepMetres: Sourced<Metres>
  /** A ball met further from its place than this, chased or in the air, is lost to the pattern. */
  readonly chaseMetres: Sourced<Metres>
}

/** Half the gate of the field check that measures a team's reach, and the share of balls through it at that length. */
const GATE_HALF_METRES = 1.5
/** Standard normal quantile of 0.85: seven of ten lie within so many standard deviations. */
const SEVEN_OF_TEN = 1.036433

/**
 * The error in direction that sends seven of ten balls through a 3 m gate at this length: what the reach a club measures
 * on its field says about direction. Degrees to one decimal.
 */
export function directionAtReach(reach: Metres): number {
  const degrees = (Math.atan(GATE_HALF_METRES / reach) * 180) / Math.PI
  return Math.round((degrees / SEVEN_OF_TEN) * 10) / 10
}

const DIRECTION = 'computed: seven of ten through a 3 m gate at the longest pass of the age profile'

/** Habits: speed, touch, reaction. */
const ROWS = {
  U8: [0.2, 0.9, 0.3],
  U9: [0.18, 0.8, 0.28],
  U10: [0.16, 0.7, 0.25],
  U11: [0.15, 0.6, 0.25],
  U12: [0.13, 0.5, 0.22],
  U13: [0.12, 0.45, 0.2],
  U14: [0.11, 0.4, 0.2],
  U15: [0.105, 0.38, 0.19],
  U16: [0.1, 0.36, 0.18],
  U17: [0.095, 0.34, 0.17],
  U18: [0.09, 0.33, 0.165],
  U19: [0.085, 0.31, 0.16],
  adult: [0.08, 0.3, 0.15],
} as const satisfies Record<ProfileId, readonly [number, number, number]>

export const ERROR_PROFILES: Readonly<Record<ProfileId, ErrorProfile>> = {
  U8: errorsOf('U8'),
  U9: errorsOf('U9'),
  U10: errorsOf('U10'),
  U11: errorsOf('U11'),
  U12: errorsOf('U12'),
  U13: errorsOf('U13'),
  U14: errorsOf('U14'),
  U15: errorsOf('U15'),
  U16: errorsOf('U16'),
  U17: errorsOf('U17'),
  U18: errorsOf('U18'),
  U19: errorsOf('U19'),
  adult: errorsOf('adult'),
}

function errorsOf(profileId: ProfileId): ErrorProfile {
  const [speed, touch, reaction] = ROWS[profileId]
  const reach = AGE_PROFILES[profileId].passLengthMax.value
  return {
    profileId,
    directionDegrees: { value: directionAtReach(reach), kind: 'computed', source: DIRECTION },
    speedShare: habit(speed),
    touchMetres: habit(metres(touch)),
    reactionShare: habit(reaction),
    oneTouchTimes: habit(1.3),
    handsTimes: habit(0.6),
    stepMetres: habit(metres(1)),
    chaseMetres: habit(metres(5)),
  }
}

/** The same errors with the direction of a team whose reach was measured on the field: what a team has shown beats a habit. */
export function errorsAtReach(errors: ErrorProfile, reach: Sourced<Metres>): ErrorProfile {
  const source = `computed: seven of ten through a 3 m gate at ${reach.value} m (${reach.source})`
  return { ...errors, directionDegrees: { value: directionAtReach(reach.value), kind: 'computed', source } }
}

/** The errors of a profile, with every error in it so many times as large; zero leaves none, as the timeline plays. */
export function scaleErrors(errors: ErrorProfile, times: number): ErrorProfile {
  const scale = <Value extends number>(sourced: Sourced<Value>): Sourced<Value> => ({
    value: (sourced.value * times) as Value,
    kind: 'computed',
    source: `${times} times: ${sourced.source}`,
  })
  return {
    ...errors,
    directionDegrees: scale(errors.directionDegrees),
    speedShare: scale(errors.speedShare),
    touchMetres: scale(errors.touchMetres),
    reactionShare: scale(errors.reactionShare),
  }
}

/** What a club may set; wider than anything a player does, narrow enough that every sum of a run stays finite. */
const ERROR_RANGES = {
  directionDegrees: [0, 90],
  speedShare: [0, 5],
  touchMetres: [0, 50],
  reactionShare: [0, 5],
  oneTouchTimes: [0, 10],
  handsTimes: [0, 10],
  stepMetres: [0, 50],
  chaseMetres: [0, 200],
} as const satisfies Record<Exclude<keyof ErrorProfile, 'profileId'>, readonly [number, number]>

const PROFILE_RANGES = {
  topSpeed: [0.1, 20],
  acceleration: [0.1, 50],
  reaction: [0, 10],
  receiveTurnLook: [0, 60],
  firstTouch: [0, 60],
  oneTouch: [0, 60],
  carrySpeed: [0.1, 20],
  arrivalSpeed: [0.1, 50],
  arrivalSpeedIntoSpace: [0, 50],
  kickSpeedMax: [0.1, 80],
  throwSpeedMax: [0.1, 80],
  reach: [0, 10],
} as const satisfies Partial<Record<keyof AgeProfile, readonly [number, number]>>

/** The first value that is no number or outside what can be played, or null. */
export function findUnusable(profile: AgeProfile, errors: ErrorProfile): string | null {
  const outside = (value: number, [low, high]: readonly [number, number]) => !(value >= low && value <= high)
  for (const key of Object.keys(ERROR_RANGES) as (keyof typeof ERROR_RANGES)[]) {
    if (outside(errors[key].value, ERROR_RANGES[key])) return key
  }
  for (const key of Object.keys(PROFILE_RANGES) as (keyof typeof PROFILE_RANGES)[]) {
    if (outside(profile[key].value, PROFILE_RANGES[key])) return key
  }
  return PROFILE_IDS.includes(profile.profileId) ? null : 'profileId'
}

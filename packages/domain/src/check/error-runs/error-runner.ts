import type { FormatChoices } from '../../formats'
import { checkShape, listSpots, type PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { ok, type Result, refuse } from '../../quantities'
import { type AgeProfile, profileFor } from '../profiles'
import { SURFACES, type Surface } from '../surfaces'
import { ERROR_PROFILES, type ErrorProfile, errorsAtReach, findUnusable } from './error-profile'
import { makeMemory } from './memory'
import { playRun } from './play-run'
import { compileProgram, type Program } from './program'

/** What is played: a document on a space, by whom and on what. */
export type ErrorSetting = {
  /** Players of this profile; by default that of the pattern's age group. */
  readonly profile?: AgeProfile
  /** Their errors; by default those of the profile's age, with the direction its longest pass tells of. */
  readonly errors?: ErrorProfile
  readonly surface?: Surface
  readonly choices?: FormatChoices
}

/** Which runs: `runs` of them from `from` on (0 by default). Slices that meet add up to the whole exactly. */
export type RunRange = { readonly seed: number; readonly runs: number; readonly from?: number }

export const RUNS_MAX = 1_000_000
export const STEPS_MAX = 200
/** One call plays at most so many steps of runs, opponents counted: some seconds. A longer wish comes in slices. */
export const WORK_MAX = 100_000_000

export type ErrorRunsRefusal = {
  readonly code:
    | 'nothing-to-run'
    | 'too-many-steps'
    | 'document-has-faults'
    | 'place-not-measured'
    | 'setting-not-usable'
    | 'runs-out-of-range'
    | 'seed-out-of-range'
    | 'too-much-work'
  readonly detail: string
}

/** A document made ready: any run of it can be played, in any order, as often as one likes. */
export type ErrorRunner = {
  readonly program: Program
  /** The outcome of one run: −1 where they got out, else step × number of causes + cause. */
  readonly play: (seed: number, run: number) => number
}

export function makeErrorRunner(
  document: PatternDocument,
  space: Space,
  setting: ErrorSetting = {},
): Result<ErrorRunner, ErrorRunsRefusal> {
  const { steps } = document
  if (steps.length === 0)
    return refuse({ code: 'nothing-to-run', detail: 'a pattern without steps has nothing to run' })
  if (steps.length > STEPS_MAX) {
    return refuse({
      code: 'too-many-steps',
      detail: `at most ${STEPS_MAX} steps are run, this pattern has ${steps.length}`,
    })
  }
  const unmeasured = findUnmeasured(document, space)
  if (unmeasured !== null) return refuse({ code: 'place-not-measured', detail: unmeasured })
  const fault = checkShape(document)[0]
  if (fault !== undefined) return refuse({ code: 'document-has-faults', detail: `${fault.pointer}: ${fault.detail}` })
  const profile = setting.profile ?? profileFor(document.ageGroup)
  const errors = setting.errors ?? errorsAtReach(ERROR_PROFILES[profile.profileId], profile.passLengthMax)
  const surface = setting.surface ?? 'normal'
  const unusable = SURFACES.includes(surface) ? findUnusable(profile, errors) : 'surface'
  if (unusable !== null) {
    return refuse({ code: 'setting-not-usable', detail: `${unusable} is no number, or outside what can be played` })
  }
  const chosen = setting.choices === undefined ? {} : { choices: setting.choices }
  const program = compileProgram(document, space, { profile, errors, surface, ...chosen })
  const memory = makeMemory(program)
  return ok({ program, play: (seed, run) => playRun(program, memory, seed, run) })
}

/** Lengths no pitch reaches, in millimetres either way. */
const LENGTH_MAX_MM = 1_000_000

function isMeasured(length: number): boolean {
  return Number.isSafeInteger(length) && Math.abs(length) <= LENGTH_MAX_MM
}

function findUnmeasured(document: PatternDocument, space: Space): string | null {
  if (!(isMeasured(space.lengthMm) && isMeasured(space.widthMm) && space.lengthMm > 0 && space.widthMm > 0)) {
    return 'the size of the space must be whole millimetres, more than none'
  }
  if (space.goals.some((goal) => !isMeasured(goal.widthMm))) return 'the goals of the space must be whole millimetres'
  if (document.targets.some((target) => !isMeasured(target.widthMm))) return 'targets must be whole millimetres wide'
  const spot = listSpots(document).find((named) => !(isMeasured(named.spot.upMm) && isMeasured(named.spot.rightMm)))
  return spot === undefined ? null : 'every spot must be whole millimetres from its landmark'
}

/** Why these runs cannot be played, or null. */
export function findRangeFault(runners: readonly ErrorRunner[], range: RunRange): ErrorRunsRefusal | null {
  const { seed, runs, from = 0 } = range
  if (!(Number.isSafeInteger(seed) && seed >= 0 && seed < 2 ** 32)) {
    return { code: 'seed-out-of-range', detail: 'a seed is a whole number from 0 to 4294967295' }
  }
  const isRange = Number.isSafeInteger(runs) && Number.isSafeInteger(from) && runs >= 1 && from >= 0
  if (!isRange || from + runs > RUNS_MAX) {
    return { code: 'runs-out-of-range', detail: `runs are whole numbers, 1 to ${RUNS_MAX} of them` }
  }
  const work = runners.reduce((sum, { program }) => sum + program.steps * (1 + program.opponents), 0) * runs
  if (work <= WORK_MAX) return null
  return { code: 'too-much-work', detail: `${runs} runs of this are too many at once: play them in slices` }
}

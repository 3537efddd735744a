import { type Format, type FormatChoices, formatOf } from '../../formats'
import type { PatternDocument } from '../../pattern'
import type { Space } from '../../pitch'
import { millisecondsOf, seconds } from '../../quantities'
import type { CoverOptions } from '../cover/cover-rules'
import { type CheckLimits, DEFAULT_LIMITS } from '../limits'
import { type Setting, settingOf } from '../play-step'
import { type AgeProfile, profileFor } from '../profiles'
import type { Surface } from '../surfaces'
import { BEHAVIOURS, type BehaviourName, PRESS_BEHAVIOURS } from './behaviours'
import { chooserFor } from './choose-answer'
import { type Mend, mendsFor } from './mend'
import { type Play, playOf } from './play'
import { type Break, press } from './press'
import type { PressSetting } from './press-setting'
import { type StartPlace, startPlaces } from './start-places'

export type PressureOptions = {
  readonly profile?: AgeProfile
  readonly surface?: Surface
  readonly choices?: FormatChoices
  /** The most opponents to try; by default six, or as many as there are places to come from. */
  readonly opponentsMax?: number
  /**
   * When the law or the club lets opponents come: as the ball is in play, or only at the receiver's first touch. By default
   * as the format has it after a release from the hands; at a goal kick as the ball is in play.
   */
  readonly released?: 'ball-in-play' | 'first-touch'
}

/** A pattern that was stopped: by how many, behaving how, who came from where. */
export type Stopped = Break & {
  readonly behaviour: BehaviourName
  readonly opponents: number
  readonly starts: readonly StartPlace[]
  /** From which of the places whoever won it came. */
  readonly cameFrom: StartPlace
  /** Changes that were tried against the same opponents and help. */
  readonly mends: readonly Mend[]
}

export type Unmended = Omit<Stopped, 'mends'>

export type BehaviourPressure = {
  readonly behaviour: BehaviourName
  /** The pattern gets out against so many, wherever of the places they come from. */
  readonly worksAgainst: number
  /** What happens against one more; null where no number that was tried stops it. */
  readonly stopped: Stopped | null
}

export type PressureReport = {
  readonly places: readonly StartPlace[]
  /** So many opponents at most were tried. */
  readonly tried: number
  readonly behaviours: readonly BehaviourPressure[]
  /** Against so many it gets out, however they behave. */
  readonly worksAgainst: number
  /** The break by the fewest opponents; of these the earliest. */
  readonly firstStopped: Stopped | null
}

/** More opponents than this do not press a build-out of children (habit). */
const OPPONENTS_MAX = 6

/**
 * At which pressure a pattern first breaks. Opponents wait at places the law allows (`startPlaces`); for one more at a time
 * every choice of places is played, with each stated behaviour, and the pattern works against so many when it gets out every
 * time. Opponents run as players of the same age do: a reaction, bounded acceleration, top speed, turns that cost speed.
 * The document must have passed `checkShape`.
 */
export function pressureOn(document: PatternDocument, space: Space, options: PressureOptions = {}): PressureReport {
  const prepared = prepare(document, space, options)
  const { places } = prepared
  const tried = Math.min(options.opponentsMax ?? OPPONENTS_MAX, OPPONENTS_MAX, places.length)
  const behaviours = BEHAVIOURS.map((behaviour) => climb(prepared, behaviour, tried))
  const worksAgainst = Math.min(...behaviours.map((each) => each.worksAgainst))
  const stopped = behaviours.flatMap((each) => (each.stopped === null ? [] : [each.stopped]))
  return { places, tried, behaviours, worksAgainst, firstStopped: firstOf(stopped) }
}

export type Prepared = {
  readonly play: Play
  readonly places: readonly StartPlace[]
  readonly setting: PressSetting
  readonly limits: CheckLimits
  readonly profile: AgeProfile
  /** Times a changed step or document as the pattern itself was. */
  readonly timing: Setting
}

/** What every placing needs, worked out once. */
export function prepare(document: PatternDocument, space: Space, options: PressureOptions): Prepared {
  const profile = options.profile ?? profileFor(document.ageGroup)
  const timing = settingOf(document, space, profile, options.surface ?? 'normal', options.choices)
  const format = formatOf(document.formatId, options.choices)
  const late = isHeldBack(document) && (options.released ?? releaseOf(document, format)) === 'first-touch'
  return {
    play: playOf(document, timing),
    places: startPlaces(document, space, format, timing.place),
    setting: {
      runner: timing.runner,
      reaction: profile.reaction.value,
      reach: profile.reach.value,
      releasedAt: (timeline) => (late ? (timeline.steps[0]?.receivedAt ?? seconds(0)) : seconds(0)),
      choose: chooserFor(space, { ...coverOptionsOf(options), profile }),
    },
    limits: DEFAULT_LIMITS,
    profile,
    timing,
  }
}

function releaseOf({ restart }: PatternDocument, { buildOutCrossing }: Format): 'ball-in-play' | 'first-touch' {
  return restart === 'goalkeeper-hands' && buildOutCrossing?.value === 'touched' ? 'first-touch' : 'ball-in-play'
}

/** What a look is read with; nothing is set that the caller left open. */
function coverOptionsOf({ surface, choices }: PressureOptions): CoverOptions {
  return { ...(surface === undefined ? {} : { surface }), ...(choices === undefined ? {} : { choices }) }
}

/** Restarts at which the law makes opponents wait for the goalkeeper's team. */
function isHeldBack({ restart }: PatternDocument): boolean {
  return restart === 'goal-kick' || restart === 'goalkeeper-hands'
}

function climb(prepared: Prepared, behaviour: BehaviourName, tried: number): BehaviourPressure {
  const { play, places, setting } = prepared
  for (let opponents = 1; opponents <= tried; opponents += 1) {
    const stopped: Unmended[] = []
    for (const starts of choicesOf(places, opponents)) {
      const found = press(play, starts, PRESS_BEHAVIOURS[behaviour], setting)
      if (found !== null) stopped.push({ ...found, behaviour, opponents, starts, cameFrom: starts[found.by]! })
    }
    const first = firstOf(stopped)
    if (first !== null) {
      const mends = mendsFor(prepared, first)
      return { behaviour, worksAgainst: opponents - 1, stopped: { ...first, mends } }
    }
  }
  return { behaviour, worksAgainst: tried, stopped: null }
}

/** Fewest opponents, then the earliest; of equals the one found first. */
function firstOf<Each extends Unmended>(stopped: readonly Each[]): Each | null {
  return stopped.reduce<Each | null>((first, each) => {
    if (first === null) return each
    const sooner = each.opponents - first.opponents || millisecondsOf(each.at) - millisecondsOf(first.at)
    return sooner < 0 ? each : first
  }, null)
}

/** Every set of so many of a list, in its order. */
export function choicesOf<Item>(items: readonly Item[], count: number): readonly (readonly Item[])[] {
  if (count === 0) return [[]]
  return items.flatMap((item, index) => choicesOf(items.slice(index + 1), count - 1).map((rest) => [item, ...rest]))
}

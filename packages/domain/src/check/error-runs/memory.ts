import { bitsFor, firstWord, normalFromBits, secondWord } from './deviates'
import type { Program } from './program'

/**
 * What changes while a run is played, made once and written over by every run: nothing is allocated in between. Places in
 * metres, times in seconds from the restart.
 */
export type Memory = {
  /** The two words the errors of this run come from. */
  first: number
  second: number
  /** The step being played: a number for every name below. An array of numbers, since fields of objects are boxed. */
  readonly now: Float64Array
  /** Legs run so far: those of a player lie together, in order of start. */
  readonly legCount: Int32Array
  readonly legStart: Float64Array
  readonly legEnd: Float64Array
  readonly legFromX: Float64Array
  readonly legFromY: Float64Array
  readonly legToX: Float64Array
  readonly legToY: Float64Array
  readonly legLength: Float64Array
  readonly legSpeed: Float64Array
}

/** Answer of `locate` and `destine`. */
export const PLACE_X = 0
export const PLACE_Y = 1
/** The ball: when and where it leaves, and which way it goes. */
export const STARTS_AT = 2
export const FROM_X = 3
export const FROM_Y = 4
export const UNIT_X = 5
export const UNIT_Y = 6
/** Sine of its error in direction; a ball let through keeps it. */
export const SINE = 7
/** Speed with which it leaves. */
export const RELEASE = 8
/** Where it was to be met. */
export const PLAN_X = 9
export const PLAN_Y = 10
/** Where it comes nearest to that, or stops or lands, or is met; when, and how fast it is then. */
export const AT_X = 11
export const AT_Y = 12
export const ARRIVES_AT = 13
export const SPEED_THERE = 14
/** Where the receiver waits for it, from when, and how late they see where it goes. */
export const BODY_X = 15
export const BODY_Y = 16
export const THERE_AT = 17
export const REACTION = 18
/** When the ball is the receiver's. */
export const RECEIVED_AT = 19
/** Answer of `drawDeviate`. */
export const DEVIATE = 20
const SLOTS = 21

export function makeMemory(program: Program): Memory {
  const legs = program.players * program.legsMax
  return {
    first: 0,
    second: 0,
    now: new Float64Array(SLOTS),
    legCount: new Int32Array(program.players),
    legStart: new Float64Array(legs),
    legEnd: new Float64Array(legs),
    legFromX: new Float64Array(legs),
    legFromY: new Float64Array(legs),
    legToX: new Float64Array(legs),
    legToY: new Float64Array(legs),
    legLength: new Float64Array(legs),
    legSpeed: new Float64Array(legs),
  }
}

/** Everyone back to their starting places, and the errors of another run. */
export function startRun(memory: Memory, seed: number, run: number): void {
  memory.first = firstWord(seed, run)
  memory.second = secondWord(seed, run)
  memory.legCount.fill(0)
  memory.now.fill(0)
}

/** Draws the deviate of one quantity of one step into its slot: a number handed back by a function would be boxed. */
export function drawDeviate(memory: Memory, step: number, quantity: number): void {
  memory.now[DEVIATE] = normalFromBits(bitsFor(memory.first, memory.second, step, quantity))
}

// The half of check.full's floor that plays: where everyone is and when every ball arrives, in flat arrays.
import type { AgeProfile } from '../../packages/domain/src/check/index'
import { CARRY, type checkArrays, PASS, SET_BACK } from './check-floor-arrays'

/** Runs a player can make in one way. */
const LEGS = 32

export const far = (ax: number, ay: number, bx: number, by: number) =>
  Math.sqrt((ax - bx) * (ax - bx) + (ay - by) * (ay - by))

export function makeFloorPlayer(arrays: ReturnType<typeof checkArrays>, profile: AgeProfile, a: number) {
  const { P, N, actor, atOnce, into, kind, landmarkX, landmarkY, receiver, runFrom, runner, runSpot, runStart } = arrays
  const { spotLandmark, spotRight, spotUp, startSpot, trunk, ways } = arrays
  const x = new Float64Array(N)
  const y = new Float64Array(N)
  const A = profile.acceleration.value
  const V = profile.topSpeed.value
  const C = profile.carrySpeed.value
  const reaction = profile.reaction.value
  const kick = profile.kickSpeedMax.value
  const ramp = (V * V) / (2 * A)
  const carryRamp = (C * C) / (2 * A)

  const legs = new Uint8Array(P)
  const legX0 = new Float64Array(P * LEGS)
  const legY0 = new Float64Array(P * LEGS)
  const legX1 = new Float64Array(P * LEGS)
  const legY1 = new Float64Array(P * LEGS)
  const legStart = new Float64Array(P * LEGS)
  const legEnd = new Float64Array(P * LEGS)
  const legLength = new Float64Array(P * LEGS)
  const legSpeed = new Float64Array(P * LEGS)
  const W = Math.max(...ways.map((way) => way.at.length))
  const legsBefore = new Uint8Array((W + 1) * P)
  const startsAt = new Float64Array(W)
  const arrivesAt = new Float64Array(W)
  const receivedAt = new Float64Array(W)
  const settles = new Float64Array(W)
  const fromX = new Float64Array(W)
  const fromY = new Float64Array(W)
  const toX = new Float64Array(W)
  const toY = new Float64Array(W)
  const release = new Float64Array(W)
  const lacks = new Float64Array(W)

  function placeAll(): void {
    const ball = startSpot[actor[trunk[0]!]!]!
    const ballX = landmarkX[spotLandmark[ball]!]! + spotUp[ball]!
    const ballY = landmarkY[spotLandmark[ball]!]! + spotRight[ball]!
    for (let i = 0; i < N; i += 1) {
      const drawnX = landmarkX[spotLandmark[i]!]! + spotUp[i]!
      const drawnY = landmarkY[spotLandmark[i]!]! + spotRight[i]!
      const near = far(drawnX, drawnY, ballX, ballY) <= 15
      x[i] = near ? ballX + (drawnX - ballX) : drawnX
      y[i] = near ? ballY + (drawnY - ballY) : drawnY
    }
  }

  /** Where the player last asked for is. */
  const here = new Float64Array(2)
  function locate(player: number, at: number): void {
    const base = player * LEGS
    let i = base + legs[player]! - 1
    while (i >= base && legStart[i]! > at) i -= 1
    if (i < base) {
      here[0] = x[startSpot[player]!]!
      here[1] = y[startSpot[player]!]!
    } else if (at >= legEnd[i]! || legLength[i] === 0) {
      here[0] = legX1[i]!
      here[1] = legY1[i]!
    } else {
      const time = at - legStart[i]!
      const v = legSpeed[i]!
      const way = time <= v / A ? (A * time * time) / 2 : v * time - (v * v) / (2 * A)
      const share = Math.min(1, way / legLength[i]!)
      here[0] = legX0[i]! + (legX1[i]! - legX0[i]!) * share
      here[1] = legY0[i]! + (legY1[i]! - legY0[i]!) * share
    }
  }
  function go(player: number, gx: number, gy: number, at: number, v: number, vRamp: number): void {
    const n = legs[player]!
    const i = player * LEGS + n
    if (
      gx === (n === 0 ? x[startSpot[player]!] : legX1[i - 1]) &&
      gy === (n === 0 ? y[startSpot[player]!] : legY1[i - 1])
    )
      return
    const start = n === 0 ? Math.max(at, 0) : Math.max(at, legStart[i - 1]!)
    locate(player, start)
    const length = far(here[0]!, here[1]!, gx, gy)
    legX0[i] = here[0]!
    legY0[i] = here[1]!
    legX1[i] = gx
    legY1[i] = gy
    legStart[i] = start
    legEnd[i] = start + (length <= vRamp ? Math.sqrt((2 * length) / A) : length / v + v / (2 * A))
    legLength[i] = length
    legSpeed[i] = v
    legs[player] = n + 1
  }

  /** One step of a way; `earlier` is the start its receiver's run takes instead, or -1. */
  function play(at: readonly number[], i: number, earlier: number): void {
    const s = at[i]!
    const by = actor[s]!
    const to = receiver[s]!
    for (let p = 0; p < P; p += 1) legsBefore[i * P + p] = legs[p]!
    let starts = 0
    if (i > 0) {
      const k = kind[s]!
      const once = kind[at[i - 1]!] === CARRY || k === SET_BACK || (k === PASS && atOnce[s] === 1)
      starts =
        receivedAt[i - 1]! +
        (once ? profile.oneTouch.value : k === CARRY ? profile.firstTouch.value : profile.receiveTurnLook.value)
    }
    startsAt[i] = starts
    locate(by, starts)
    const fx = here[0]!
    const fy = here[1]!
    const first = runFrom[s]!
    const end = runFrom[s + 1]!
    for (let r = first; r < end; r += 1) {
      const who = runner[r]!
      const start = who === to && earlier >= 0 ? earlier : runStart[r]!
      if (start === 2) continue
      const cue = start === 1 ? starts : i === 0 ? 0 : startsAt[i - 1]!
      go(who, x[runSpot[r]!]!, y[runSpot[r]!]!, cue + (who === by ? 0 : reaction), V, ramp)
    }
    const place = into[s]!
    const held = to * LEGS + legs[to]! - 1
    const gx = place >= 0 ? x[place]! : legs[to] === 0 ? x[startSpot[to]!]! : legX1[held]!
    const gy = place >= 0 ? y[place]! : legs[to] === 0 ? y[startSpot[to]!]! : legY1[held]!
    const length = far(fx, fy, gx, gy)
    let duration = 0
    let short = 0
    if (kind[s] === CARRY) duration = length <= carryRamp ? Math.sqrt((2 * length) / A) : length / C + C / (2 * A)
    else {
      const arrival = place < 0 ? profile.arrivalSpeed.value : profile.arrivalSpeedIntoSpace.value
      const v = Math.min(kick, Math.sqrt(arrival * arrival + 2 * a * length))
      const squared = v * v - 2 * a * length
      release[i] = v
      if (squared < -1e-9) {
        duration = v / a
        short = length - (v * v) / (2 * a)
      } else duration = (2 * length) / (v + Math.sqrt(Math.max(0, squared)))
    }
    const share = short > 0 ? 1 - short / length : 1
    const tx = short > 0 ? fx + (gx - fx) * share : gx
    const ty = short > 0 ? fy + (gy - fy) * share : gy
    const arrives = starts + duration
    const waits = place >= 0 && kind[s] !== CARRY
    for (let r = first; r < end; r += 1) {
      const start = runner[r] === to && earlier >= 0 ? earlier : runStart[r]!
      if (start === 2 && waits && runner[r] === to)
        go(to, x[runSpot[r]!]!, y[runSpot[r]!]!, arrives + (to === by ? 0 : reaction), V, ramp)
    }
    if (kind[s] === CARRY) go(to, tx, ty, starts, C, carryRamp)
    else {
      const n = legs[to]!
      const last = to * LEGS + n - 1
      const off = far(n === 0 ? x[startSpot[to]!]! : legX1[last]!, n === 0 ? y[startSpot[to]!]! : legY1[last]!, tx, ty)
      if (off > 0.5) go(to, tx, ty, Math.max(starts + reaction, n === 0 ? 0 : legEnd[last]!), V, ramp)
    }
    const settled = legs[to] === 0 ? 0 : legEnd[to * LEGS + legs[to]! - 1]!
    fromX[i] = fx
    fromY[i] = fy
    toX[i] = tx
    toY[i] = ty
    lacks[i] = short
    arrivesAt[i] = arrives
    settles[i] = settled
    receivedAt[i] = Math.max(arrives, settled)
    for (let r = first; r < end; r += 1) {
      const start = runner[r] === to && earlier >= 0 ? earlier : runStart[r]!
      if (start === 2 && !(waits && runner[r] === to))
        go(runner[r]!, x[runSpot[r]!]!, y[runSpot[r]!]!, arrives + (runner[r] === by ? 0 : reaction), V, ramp)
    }
  }

  function rewind(i: number): void {
    for (let p = 0; p < P; p += 1) legs[p] = legsBefore[i * P + p]!
  }

  function reset(): void {
    legs.fill(0)
    placeAll()
  }

  /** Nobody later than this runs on: is the player standing at a time? */
  function stands(player: number, at: number): boolean {
    for (let i = player * LEGS; i < player * LEGS + legs[player]!; i += 1)
      if (legStart[i]! <= at && legEnd[i]! > at) return false
    return true
  }

  const times = { startsAt, arrivesAt, receivedAt, settles, fromX, fromY, toX, toY, release, lacks }
  return { x, y, here, times, reset, locate, play, rewind, stands }
}

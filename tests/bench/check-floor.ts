// The floor of check.full: the numbers of one check in flat arrays, nothing allocated and nothing said. It knows the kinds of
// step the bench's pattern has (ground passes to feet and into space, set-backs, carries) and no other, and does only what the
// notes need: an answer is played from where it leaves the trunk and measured at its own steps, positions are found once a
// moment, and a lane is searched only where the opponent could be in time at all.
import type { AgeProfile, CheckLimits } from '../../packages/domain/src/check/index'
import type { PatternDocument } from '../../packages/domain/src/pattern/index'
import type { Space } from '../../packages/domain/src/pitch/index'
import { CARRY, checkArrays, PASS } from './check-floor-arrays'
import { far, makeFloorPlayer } from './check-floor-play'

export const FLOOR_RULES = [
  'off-the-space',
  'two-in-one-place',
  'ball-stops-short',
  'receiver-late',
  'pass-too-long',
  'lane-closed',
  'goal-kick-law',
  'offside-law',
  'cover-shadow',
  'out-of-view',
  'support-distance',
  'nobody-behind',
  'carry-release',
] as const
const OFF = 0
const PLACE = 1
const SHORT = 2
const LATE = 3
const LONG = 4
const LANE = 5
const GOAL_KICK = 6
const OFFSIDE = 7
const SHADOW = 8
const VIEW = 9
const SUPPORT = 10
const BEHIND = 11
const RELEASE = 12

type Asked = {
  readonly document: PatternDocument
  readonly space: Space
  readonly profile: AgeProfile
  readonly limits: CheckLimits
  readonly deceleration: number
}

/** Makes the arrays once, as a page would keep them; what it answers then runs one whole check. */
export function makeCheckFloor({ document, space, profile, limits, deceleration: a }: Asked) {
  const arrays = checkArrays(document, space)
  const {
    startSpot,
    thingSpot,
    isOpponent,
    kind,
    actor,
    receiver,
    atOnce,
    into,
    drawnAt,
    runFrom,
    runner,
    runSpot,
    runStart,
    halfway,
    lengthM,
    halfWidth,
    goalDepth,
    goalHalf,
    penaltyDepth,
    penaltyHalf,
    stepIds,
    trunk,
    ways,
    P,
    things,
  } = arrays
  const { x, y, here, times, reset, locate, play, rewind, stands } = makeFloorPlayer(arrays, profile, a)
  const { startsAt, arrivesAt, receivedAt, settles, fromX, fromY, toX, toY, release, lacks } = times
  const V = profile.topSpeed.value
  const reaction = profile.reaction.value
  const reach = profile.reach.value
  const W = startsAt.length
  const marginLimit = Math.round(limits.laneMarginSeconds.value * 1000)
  const momentX = new Float64Array((2 * W + 1) * P)
  const momentY = new Float64Array((2 * W + 1) * P)
  const placed = new Uint8Array(P * P)
  const supported = new Uint8Array(P * P)
  const trunkTimes = new Float64Array(trunk.length * 3)
  const notes = {
    count: 0,
    rule: new Uint8Array(64),
    step: new Int16Array(64),
    value: new Float64Array(64),
    start: new Int8Array(64),
  }

  function note(rule: number, step: number, value: number): void {
    notes.rule[notes.count] = rule
    notes.step[notes.count] = step
    notes.value[notes.count] = value
    notes.start[notes.count] = -1
    notes.count += 1
  }
  const mm = (length: number) => (length < 0 ? -Math.round(-length * 1000) : Math.round(length * 1000))

  function outside(place: number, depth: number, half: number): number {
    const dx = x[place]! - Math.min(depth, Math.max(0, x[place]!))
    const dy = y[place]! - Math.min(half, Math.max(-half, y[place]!))
    return mm(Math.sqrt(dx * dx + dy * dy))
  }
  function offSpace(place: number, step: number): void {
    const off = outside(place, lengthM, halfWidth)
    if (off > 0) note(OFF, step, off / 1000)
  }
  function offStep(s: number): void {
    if (into[s]! >= 0) offSpace(into[s]!, s)
    for (let r = runFrom[s]!; r < runFrom[s + 1]!; r += 1) {
      const same = into[s]! >= 0 && x[runSpot[r]!] === x[into[s]!] && y[runSpot[r]!] === y[into[s]!]
      if (runner[r] !== receiver[s] || !same) offSpace(runSpot[r]!, s)
    }
  }

  function segmentMm(thing: number, i: number): number {
    const dx = toX[i]! - fromX[i]!
    const dy = toY[i]! - fromY[i]!
    const px = x[thing]! - fromX[i]!
    const py = y[thing]! - fromY[i]!
    const squared = dx * dx + dy * dy
    const share = squared === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / squared))
    return mm(far(px, py, dx * share, dy * share))
  }

  /** The lane's smallest margin in milliseconds, or the limit where it cannot be below. */
  function laneMs(thing: number, i: number): number {
    const length = far(fromX[i]!, fromY[i]!, toX[i]!, toY[i]!)
    const ux = length === 0 ? 0 : (toX[i]! - fromX[i]!) / length
    const uy = length === 0 ? 0 : (toY[i]! - fromY[i]!) / length
    const dx = x[thing]! - fromX[i]!
    const dy = y[thing]! - fromY[i]!
    const along = dx * ux + dy * uy
    const off2 = length === 0 ? dx * dx + dy * dy : (dx * uy - dy * ux) * (dx * uy - dy * ux)
    const v = release[i]!
    const end = Math.min(length, (v * v) / (2 * a))
    const rest = Math.sqrt(Math.max(0, v * v - 2 * a * end))
    const rolls = v + rest === 0 ? 0 : (2 * end) / (v + rest)
    const beside = along - Math.min(end, Math.max(0, along))
    const nearest = Math.max(0, Math.sqrt(beside * beside + off2) - reach)
    if (reaction + nearest / V - rolls > limits.laneMarginSeconds.value + 0.001) return marginLimit
    const atEnd = reaction + Math.max(0, Math.sqrt((end - along) * (end - along) + off2) - reach) / V - rolls
    const edge = off2 <= reach * reach ? along + Math.sqrt(reach * reach - off2) : 0
    let at = Math.min(end, Math.max(0, along, edge))
    let inner = Number.POSITIVE_INFINITY
    for (let turn = 0; turn < 60; turn += 1) {
      const ahead = at - along
      const away = Math.sqrt(ahead * ahead + off2)
      const w = Math.sqrt(Math.max(0, v * v - 2 * a * at))
      const slope = (away === 0 ? 1 : ahead / away) / V - 1 / w
      const bend = (away === 0 ? 0 : off2 / (V * away * away * away)) - a / (w * w * w)
      const next = at - slope / bend
      if (slope >= 0 || (bend > 0 && !(next > at))) {
        inner = reaction + Math.max(0, away - reach) / V - (2 * at) / (v + w)
        break
      }
      if (bend <= 0 || next >= end) break
      at = next
    }
    return Math.round(Math.min(inner, atEnd) * 1000)
  }

  function measureLanes(s: number, i: number): void {
    if (kind[s] === CARRY) return
    for (let thing = 0; thing < things; thing += 1) {
      if (isOpponent[thing] === 1) {
        const margin = laneMs(thingSpot[thing]!, i)
        if (margin < marginLimit) note(LANE, s, margin / 1000)
      } else {
        const off = segmentMm(thingSpot[thing]!, i)
        if (off < mm(limits.poleMetres.value)) note(LANE, s, off / 1000)
      }
    }
  }

  function measureShadow(s: number, i: number): void {
    if (kind[s] === CARRY) return
    const who = (2 * i + 1) * P + receiver[s]!
    const length = far(fromX[i]!, fromY[i]!, momentX[who]!, momentY[who]!)
    const ux = length === 0 ? 0 : (momentX[who]! - fromX[i]!) / length
    const uy = length === 0 ? 0 : (momentY[who]! - fromY[i]!) / length
    const limit = mm(limits.shadowMetres.value)
    let least = limit
    for (let thing = 0; thing < things; thing += 1) {
      if (isOpponent[thing] === 0) continue
      const dx = x[thingSpot[thing]!]! - fromX[i]!
      const dy = y[thingSpot[thing]!]! - fromY[i]!
      const along = dx * ux + dy * uy
      const off = mm(Math.abs(dx * uy - dy * ux))
      if (along <= 0 || along >= length || off >= least) continue
      if (segmentMm(thingSpot[thing]!, i) >= limit) least = off
    }
    if (least < limit) note(SHADOW, s, least / 1000)
  }

  function measureView(at: readonly number[], i: number): void {
    const s = at[i]!
    const next = at[i + 1]
    if (next === undefined || kind[s] === CARRY || kind[next] !== PASS || receiver[s] !== actor[next]) return
    const ax = fromX[i]! - toX[i]!
    const ay = fromY[i]! - toY[i]!
    const bx = toX[i + 1]! - toX[i]!
    const by = toY[i + 1]! - toY[i]!
    const angle = Math.round((Math.abs(Math.atan2(ax * by - ay * bx, ax * bx + ay * by)) * 180) / Math.PI)
    if (angle <= limits.viewDegrees.value) return
    let seen = atOnce[next] === 1
    for (let thing = 0; thing < things && !seen; thing += 1)
      seen =
        isOpponent[thing] === 1 &&
        mm(far(x[thingSpot[thing]!]!, y[thingSpot[thing]!]!, toX[i]!, toY[i]!)) < mm(limits.turnRoomMetres.value)
    if (seen) note(VIEW, s, angle)
  }

  function measureSupport(s: number, i: number, says: boolean): void {
    if (kind[s] !== PASS) return
    const by = actor[s]!
    const near = mm(limits.supportNearMetres.value)
    const least = mm(limits.placeMetres.value)
    const reached = mm(profile.passLengthMax.value)
    let nearest = Number.POSITIVE_INFINITY
    for (let p = 0; p < P; p += 1) {
      if (p === by) continue
      const at = (2 * i + 1) * P + p
      const away = mm(far(momentX[at]!, momentY[at]!, fromX[i]!, fromY[i]!))
      if (away < nearest) nearest = away
      if (away >= near || away < least || p === 0 || supported[by * P + p] === 1 || !stands(p, startsAt[i]!)) continue
      supported[by * P + p] = 1
      supported[p * P + by] = 1
      if (says) note(SUPPORT, s, away / 1000)
    }
    if (says && nearest > reached && mm(far(fromX[i]!, fromY[i]!, toX[i]!, toY[i]!)) <= reached)
      note(SUPPORT, s, nearest / 1000)
  }

  function findPlaces(count: number): void {
    for (let moment = 0; moment <= 2 * count; moment += 1) {
      const i = (moment - 1) >> 1
      const time = moment === 0 ? 0 : moment % 2 === 1 ? startsAt[i]! : receivedAt[i]!
      for (let p = 0; p < P; p += 1) {
        locate(p, time)
        momentX[moment * P + p] = here[0]!
        momentY[moment * P + p] = here[1]!
      }
    }
  }

  function measurePairs(at: readonly number[], since: number, count: number): void {
    const limit = limits.placeMetres.value
    for (let moment = 0; moment <= 2 * count; moment += 1) {
      const i = (moment - 1) >> 1
      for (let p = 0; p < P; p += 1) {
        const px = momentX[moment * P + p]!
        const py = momentY[moment * P + p]!
        for (let q = p + 1; q < P; q += 1) {
          const dx = Math.abs(px - momentX[moment * P + q]!)
          const dy = Math.abs(py - momentY[moment * P + q]!)
          if (dx >= limit || dy >= limit) continue
          const apart = mm(Math.sqrt(dx * dx + dy * dy))
          if (apart >= mm(limit) || placed[p * P + q] === 1) continue
          placed[p * P + q] = 1
          if (i >= since || since === 0) note(PLACE, i < 0 ? -1 : at[i]!, apart / 1000)
        }
      }
    }
  }

  function measureBehind(at: readonly number[], since: number, count: number): void {
    const from = mm(halfway * 2 * limits.stayBehindShare.value)
    let lasting = false
    for (let i = 0; i < count; i += 1) {
      const s = at[i]!
      const ball = mm(toX[i]!)
      let behind = 0
      if (ball > from)
        for (let p = 1; p < P; p += 1) if (p !== receiver[s] && mm(momentX[(2 * i + 2) * P + p]!) < ball) behind += 1
      const before = lasting
      lasting = ball > from && behind < limits.stayBehindPlayers.value
      if (lasting && !before && i >= since) note(BEHIND, s, behind)
    }
  }

  function measureStep(at: readonly number[], i: number, offsideFrom: number): void {
    const s = at[i]!
    offStep(s)
    if (mm(lacks[i]!) > mm(limits.shortMetres.value)) note(SHORT, s, mm(lacks[i]!) / 1000)
    const length = mm(far(fromX[i]!, fromY[i]!, toX[i]!, toY[i]!))
    if (kind[s] !== CARRY && length > mm(profile.passLengthMax.value)) note(LONG, s, length / 1000)
    measureLanes(s, i)
    measureShadow(s, i)
    measureView(at, i)
    if (kind[s] !== CARRY && i > 0) {
      const over = mm(momentX[(2 * i + 1) * P + receiver[s]!]! - Math.max(offsideFrom, fromX[i]!))
      if (over > 0) note(OFFSIDE, s, over / 1000)
    }
    if (kind[s] === CARRY && drawnAt[s]! >= 0) {
      const met = thingSpot[drawnAt[s]!]!
      const away = mm(far(toX[i]!, toY[i]!, x[met]!, y[met]!))
      if (away < mm(limits.releaseNearMetres.value) || away > mm(limits.releaseFarMetres.value))
        note(RELEASE, s, away / 1000)
    }
  }

  /** Whoever is late is tried with earlier starts, from the step before on; the way must have been measured before. */
  function measureLate(at: readonly number[], since: number, until: number): void {
    const limit = Math.round(limits.lateSeconds.value * 1000)
    for (let i = since; i < until; i += 1) {
      const s = at[i]!
      const late = Math.round(Math.max(0, settles[i]! - arrivesAt[i]!) * 1000)
      if (late <= limit) continue
      note(LATE, s, late / 1000)
      const found = notes.count - 1
      let start = -1
      for (let r = runFrom[s]!; r < runFrom[s + 1]!; r += 1) if (runner[r] === receiver[s]) start = runStart[r]!
      for (start -= 1; start >= 0; start -= 1) {
        const first = Math.max(0, i - 1)
        rewind(first)
        for (let again = first; again <= i; again += 1) play(at, again, again === i ? start : -1)
        if (Math.round(Math.max(0, settles[i]! - arrivesAt[i]!) * 1000) > limit) continue
        notes.start[found] = start
        break
      }
    }
  }

  function measureWay(index: number, offsideFrom: number): void {
    const { at, since, until, from } = ways[index]!
    if (index > 0) rewind(from)
    for (let i = from; i < at.length; i += 1) play(at, i, -1)
    if (index === 0)
      for (let i = 0; i < at.length; i += 1) {
        trunkTimes[i * 3] = startsAt[i]!
        trunkTimes[i * 3 + 1] = arrivesAt[i]!
        trunkTimes[i * 3 + 2] = receivedAt[i]!
      }
    findPlaces(until)
    placed.fill(0)
    supported.fill(0)
    measurePairs(at, since, until)
    measureBehind(at, since, until)
    for (let i = 0; i < until; i += 1) measureSupport(at[i]!, i, i >= since)
    for (let i = since; i < until; i += 1) measureStep(at, i, offsideFrom)
    measureLate(at, since, until)
  }

  return {
    stepIds,
    trunkTimes,
    notes,
    run(): number {
      notes.count = 0
      reset()
      for (let i = 0; i < P + things; i += 1) offSpace(i, -1)
      let deepest = Number.NEGATIVE_INFINITY
      for (let thing = 0; thing < things; thing += 1)
        if (isOpponent[thing] === 1) {
          if (x[thingSpot[thing]!]! > deepest) deepest = x[thingSpot[thing]!]!
          if (outside(thingSpot[thing]!, penaltyDepth, penaltyHalf) === 0) note(GOAL_KICK, trunk[0]!, 1)
        }
      const taker = outside(startSpot[actor[trunk[0]!]!]!, goalDepth, goalHalf)
      if (taker > 0) note(GOAL_KICK, trunk[0]!, taker / 1000)
      for (let way = 0; way < ways.length; way += 1) measureWay(way, Math.max(halfway, deepest))
      return notes.count
    },
  }
}

// The floor of errors.10k: error runs of ground passes and carries in one function over flat arrays, numbers drawn and opponents
// met on the spot. It shares nothing with the kernel but the compiled arrays it is handed.
import type { ErrorRunner } from '../../packages/domain/src/check/index'

function mix(value: number): number {
  let bits = value | 0
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b)
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35)
  return bits ^ (bits >>> 16)
}

function normal(first: number, second: number, place: number): number {
  const whole = mix(mix(first + Math.imul(place + 1, 0x85ebca77)) ^ second) >>> 0
  const upper = whole >= 0x80000000
  const rank = upper ? 0xffffffff - whole : whole
  const off = (rank + 0.5) / 0x100000000 - 0.5
  let quantile: number
  if (off < -0.425) {
    const power = rank === 0 ? -1 : 31 - Math.clz32(rank)
    const rest = rank === 0 ? 1 : (rank + 0.5) / ((1 << power) >>> 0)
    const halved = rest > Math.SQRT2
    const m = halved ? rest / 2 : rest
    const z = (m - 1) / (m + 1)
    const q = z * z
    const series =
      ((((((((q / 19 + 1 / 17) * q + 1 / 15) * q + 1 / 13) * q + 1 / 11) * q + 1 / 9) * q + 1 / 7) * q + 1 / 5) * q +
        1 / 3) *
        q +
      1
    const r = Math.sqrt(-(2 * z * series + (power + (halved ? 1 : 0) - 32) * Math.LN2)) - 1.6
    quantile =
      -(
        ((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r + 1.2704582524523684) *
          r +
          3.6478483247632045) *
          r +
          5.769497221460691) *
          r +
          4.630337846156546) *
          r +
        1.4234371107496835
      ) /
      (((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r + 0.14810397642748008) *
        r +
        0.6897673349851) *
        r +
        1.6763848301838038) *
        r +
        2.053191626637759) *
        r +
        1)
  } else {
    const r = 0.180625 - off * off
    quantile =
      (off *
        (((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
          13731.69376550946) *
          r +
          1971.5909503065513) *
          r +
          133.14166789178438) *
          r +
          3.3871328727963665)) /
      (((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
        5394.196021424751) *
        r +
        687.1870074920579) *
        r +
        42.31333070160091) *
        r +
        1)
  }
  return upper ? -quantile : quantile
}

/** All runs in one function. Ground passes to feet and carries, runs with, before and after the ball, opponents at rest. */
export function runFloor(p: ErrorRunner['program'], seed: number, runs: number): number {
  const a = p.deceleration
  const A = p.acceleration
  const V = p.topSpeed
  const leg = p.reach
  const near2 = p.reachWithStep * p.reachWithStep
  const ramp = (V * V) / (2 * A)
  const sideMax = p.spaceHalfWidth + 0.11
  const lengthMax = p.spaceLength + 0.11
  const legs = p.legsMax
  const count = new Int32Array(p.players)
  const legStart = new Float64Array(p.players * legs)
  const legEnd = new Float64Array(p.players * legs)
  const legX0 = new Float64Array(p.players * legs)
  const legY0 = new Float64Array(p.players * legs)
  const legX1 = new Float64Array(p.players * legs)
  const legY1 = new Float64Array(p.players * legs)
  const legLength = new Float64Array(p.players * legs)
  const legSpeed = new Float64Array(p.players * legs)
  let px = 0
  let py = 0
  const locate = (player: number, at: number) => {
    const base = player * legs
    let i = base + count[player]! - 1
    while (i >= base && legStart[i]! > at) i -= 1
    if (i < base) {
      px = p.startX[player]!
      py = p.startY[player]!
    } else if (at >= legEnd[i]! || legLength[i] === 0) {
      px = legX1[i]!
      py = legY1[i]!
    } else {
      const t = at - legStart[i]!
      const v = legSpeed[i]!
      const run = t <= v / A ? (A * t * t) / 2 : v * t - (v * v) / (2 * A)
      const share = Math.min(1, run / legLength[i]!)
      px = legX0[i]! + (legX1[i]! - legX0[i]!) * share
      py = legY0[i]! + (legY1[i]! - legY0[i]!) * share
    }
  }
  const go = (player: number, x: number, y: number, at: number, v: number) => {
    const n = count[player]!
    const i = player * legs + n
    const goalX = n === 0 ? p.startX[player]! : legX1[i - 1]!
    const goalY = n === 0 ? p.startY[player]! : legY1[i - 1]!
    if (goalX === x && goalY === y) return
    const start = Math.max(at, n === 0 ? 0 : legStart[i - 1]!)
    locate(player, start)
    const dx = x - px
    const dy = y - py
    const length = Math.sqrt(dx * dx + dy * dy)
    legStart[i] = start
    legEnd[i] = start + (length <= (v * v) / (2 * A) ? Math.sqrt((2 * length) / A) : length / v + v / (2 * A))
    legX0[i] = px
    legY0[i] = py
    legX1[i] = x
    legY1[i] = y
    legLength[i] = length
    legSpeed[i] = v
    count[player] = n + 1
  }
  let gotOut = 0
  for (let run = 0; run < runs; run += 1) {
    const first = mix(mix(seed ^ 0x3c6ef372) + Math.imul(run, 0x9e3779b1))
    const second = mix(mix(seed + 0x1b873593) ^ Math.imul(run + 1, 0x7feb352d))
    count.fill(0)
    let startsAt = 0
    let received = 0
    let kept = true
    for (let step = 0; step < p.steps; step += 1) {
      const before = startsAt
      if (step > 0) startsAt = received + p.handling[step]!
      const actor = p.actor[step]!
      locate(actor, startsAt)
      const fromX = px
      const fromY = py
      const firstRun = p.runsFrom[step]!
      const endRun = p.runsFrom[step + 1]!
      for (let r = firstRun; r < endRun; r += 1) {
        const cue = p.runCue[r]!
        if (cue > 1) continue
        const late =
          p.runAtOnce[r] === 1
            ? 0
            : p.reaction * Math.max(0, 1 + p.reactionShare * normal(first, second, step * 32 + 5 + r - firstRun))
        go(p.runner[r]!, p.runX[r]!, p.runY[r]!, (cue === 0 ? before : startsAt) + late, V)
      }
      const receiver = p.receiver[step]!
      const n = count[receiver]!
      const i = receiver * legs + n
      const goalX = p.named[step] === 1 ? p.goalX[step]! : n === 0 ? p.startX[receiver]! : legX1[i - 1]!
      const goalY = p.named[step] === 1 ? p.goalY[step]! : n === 0 ? p.startY[receiver]! : legY1[i - 1]!
      let arrives: number
      if (p.flight[step] === 2) {
        go(actor, goalX, goalY, startsAt, p.carrySpeed)
        const end = count[actor] === 0 ? 0 : legEnd[actor * legs + count[actor]! - 1]!
        arrives = Math.max(startsAt, end)
        received = arrives
        if (goalX < -0.11 || goalX > lengthMax || goalY < -sideMax || goalY > sideMax) kept = false
      } else {
        const dx = goalX - fromX
        const dy = goalY - fromY
        const length = Math.sqrt(dx * dx + dy * dy)
        const ux0 = length > 0 ? dx / length : 1
        const uy0 = length > 0 ? dy / length : 0
        const arrival = p.arrivalSpeed[step]!
        const most = p.speedMax[step]!
        const wanted = Math.sqrt(arrival * arrival + 2 * a * length)
        let release = Math.min(wanted, most)
        const planned = wanted <= most ? length : Math.min(length, (most * most) / (2 * a))
        const planX = fromX + ux0 * planned
        const planY = fromY + uy0 * planned
        const angle = Math.min(
          Math.PI / 2,
          Math.max(-Math.PI / 2, p.directionSpread[step]! * p.side * normal(first, second, step * 32)),
        )
        const q = angle * angle
        const sine =
          angle *
          ((((((((q / 355_687_428_096_000 - 1 / 1_307_674_368_000) * q + 1 / 6_227_020_800) * q - 1 / 39_916_800) * q +
            1 / 362_880) *
            q -
            1 / 5040) *
            q +
            1 / 120) *
            q -
            1 / 6) *
            q +
            1)
        const cosine = Math.sqrt(Math.max(0, 1 - sine * sine))
        const ux = ux0 * cosine - uy0 * sine
        const uy = ux0 * sine + uy0 * cosine
        release = Math.min(most, release * Math.max(0, 1 + p.speedSpread[step]! * normal(first, second, step * 32 + 1)))
        const passes = planned * cosine
        const squared = release * release - 2 * a * passes
        const stops = squared < -1e-9
        const rolled = stops ? (release * release) / (2 * a) : passes
        const rest = squared > 0 ? Math.sqrt(squared) : 0
        let atX = fromX + ux * rolled
        let atY = fromY + uy * rolled
        let speed = rest
        arrives = startsAt + (release + rest > 0 ? (2 * rolled) / (release + rest) : 0)
        received = arrives
        const reaction = p.reaction * Math.max(0, 1 + p.reactionShare * normal(first, second, step * 32 + 4))
        const farX = goalX - planX
        const farY = goalY - planY
        // To feet: the receiver waits where their run ends, unless the kick is too weak to get there.
        if (farX * farX + farY * farY > 0.25) {
          const free = n === 0 ? 0 : legEnd[i - 1]!
          go(receiver, planX, planY, Math.max(startsAt + reaction, free), V)
        }
        const m = count[receiver]!
        const there = m === 0 ? 0 : legEnd[receiver * legs + m - 1]!
        const bodyX = farX * farX + farY * farY > 0.25 ? planX : goalX
        const bodyY = farX * farX + farY * farY > 0.25 ? planY : goalY
        const offX = atX - planX
        const offY = atY - planY
        const off2 = offX * offX + offY * offY
        if (atX < -0.11 || atX > lengthMax || atY < -sideMax || atY > sideMax) kept = false
        else if (farX * farX + farY * farY > near2) kept = false
        else if (stops ? off2 > p.chaseMax * p.chaseMax : off2 > near2) kept = false
        else {
          const off = Math.sqrt(off2)
          let ready = there
          if (off > leg) {
            const way = off - leg
            ready =
              Math.max(there, startsAt + reaction) + (way <= ramp ? Math.sqrt((2 * way) / A) : way / V + V / (2 * A))
          }
          if (ready > arrives) {
            if (stops) received = ready
            else {
              const free = Math.min(ready - arrives, speed / a)
              const passed = speed * free - (a * free * free) / 2
              const left = speed - a * free
              const gap = passed - leg
              let chased = 0
              if (gap > 0) {
                const way = gap + (left * left) / (2 * a)
                chased = way <= ramp ? Math.sqrt((2 * way) / A) : way / V + V / (2 * A)
                if (chased < left / a) {
                  chased = (left + Math.sqrt(left * left + 2 * (A + a) * gap)) / (A + a)
                  if (chased > V / A) {
                    const lead = gap + ramp
                    const faster = V - left
                    chased = (2 * lead) / (faster + Math.sqrt(faster * faster + 2 * a * lead))
                  }
                }
              }
              const on = Math.min(chased, left / a)
              const beyond = passed + left * on - (a * on * on) / 2
              atX += ux * beyond
              atY += uy * beyond
              speed = left - a * on
              received = ready + chased
              if (beyond > p.chaseMax) kept = false
              if (atX < -0.11 || atX > lengthMax || atY < -sideMax || atY > sideMax) kept = false
            }
          }
        }
        const window = received - startsAt
        if (kept && window >= p.reaction) {
          const moving = Math.min(window, release / a)
          const way = release * moving - (a * moving * moving) / 2
          const disc = leg + V * (window - p.reaction)
          for (let x = 0; x < p.opponents; x += 1) {
            const ox = p.opponentX[x]! - fromX
            const oy = p.opponentY[x]! - fromY
            const along = ox * ux + oy * uy
            const across = ox * uy - oy * ux
            const beside = along - Math.min(way, Math.max(0, along))
            if (beside * beside + across * across > disc * disc) continue
            const behind = along - way
            if (behind * behind + across * across <= disc * disc) {
              kept = false
              break
            }
            if (moving < p.reaction) continue
            const offset = leg - V * p.reaction
            const atRest = a * along - (release * release) / 2 - V * V
            let at = p.reaction
            for (let turn = 0; turn < 60; turn += 1) {
              const ahead = along - release * at + (a * at * at) / 2
              const radius = offset + V * at
              if (ahead * ahead + across * across - radius * radius <= 0) {
                kept = false
                break
              }
              const v = release - a * at
              const curve = 1.5 * v * v + atRest
              const slope = -ahead * v - radius * V
              if (slope >= 0 || curve <= 0) break
              const next = at - slope / curve
              if (!(next > at) || next >= moving) break
              at = next
            }
            if (!kept) break
          }
        }
        if (kept) {
          const spread = p.touchSpread[step]! * speed
          let x = bodyX + atX - planX
          let y = bodyY + atY - planY
          if (spread > 0) {
            const along = spread * normal(first, second, step * 32 + 2)
            const across = spread * p.side * normal(first, second, step * 32 + 3)
            const jumpX = along * ux - across * uy
            const jumpY = along * uy + across * ux
            const off = Math.sqrt(jumpX * jumpX + jumpY * jumpY)
            x += jumpX
            y += jumpY
            if (off > leg) {
              const way = off - leg
              const lost = way <= ramp ? Math.sqrt((2 * way) / A) : way / V + V / (2 * A)
              const landX = atX + jumpX
              const landY = atY + jumpY
              if (landX < -0.11 || landX > lengthMax || landY < -sideMax || landY > sideMax) kept = false
              if (lost >= p.reaction) {
                const disc = leg + V * (lost - p.reaction)
                for (let o = 0; o < p.opponents; o += 1) {
                  const ox = p.opponentX[o]! - landX
                  const oy = p.opponentY[o]! - landY
                  if (ox * ox + oy * oy <= disc * disc) kept = false
                }
              }
              received += lost
            }
          }
          const k = receiver * legs + count[receiver]!
          legStart[k] = received
          legEnd[k] = received
          legX0[k] = x
          legY0[k] = y
          legX1[k] = x
          legY1[k] = y
          legLength[k] = 0
          legSpeed[k] = V
          count[receiver]! += 1
        }
      }
      if (!kept) break
      for (let r = firstRun; r < endRun; r += 1) {
        if (p.runCue[r] !== 3) continue
        const late =
          p.runAtOnce[r] === 1
            ? 0
            : p.reaction * Math.max(0, 1 + p.reactionShare * normal(first, second, step * 32 + 5 + r - firstRun))
        go(p.runner[r]!, p.runX[r]!, p.runY[r]!, arrives + late, V)
      }
    }
    if (kept) gotOut += 1
  }
  return gotOut
}

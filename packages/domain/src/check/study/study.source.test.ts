import { describe, expect, test } from 'vitest'
import { distance, point } from '../../geometry'
import { metres, metresPerSecond, metresPerSecondSquared, seconds } from '../../quantities'
import { draggedDuration, draggedReach, draggedSpeed, slideToRoll } from './other-balls'
import { type Contender, pitchControl, pitchControlInSteps } from './pitch-control'
import { arrivalDisc, exponentialSprint, meetOnLine } from './reach-regions'
import { type ArrivalModel, certainLead, chanceOfArrival, timeToIntercept } from './time-to-intercept'

/** Printed with five or six digits: half a thousandth of the value. */
function expectPrinted(value: number, printed: number): void {
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(Math.abs(printed) * 0.0005)
}

// Source: Spearman 2018, "Beyond Expected Goals", MIT Sloan Sports Analytics Conference, equations 3 and 4, with the parameters
// public code uses: top speed 5 m/s, 0.7 s running on, sigma 0.45 s, lambda 4.3 a second. The 0.7 s is no reaction time.
const spearman: ArrivalModel = {
  runOn: seconds(0.7),
  topSpeed: metresPerSecond(5),
  spread: seconds(0.45),
  controlRate: 4.3,
}
const arrives = (intercept: number, rateFactor = 1): Contender => ({ intercept: seconds(intercept), rateFactor })

describe('Spearman 2018, Beyond Expected Goals', () => {
  test('SPEAR-02: who moves away at first needs 2.88083 s', () => {
    const player = { at: point(0, 0), velocity: point(-3, 1) }
    expectPrinted(timeToIntercept(player, point(6, 8), spearman), 2.88083)
  })

  test.each([
    [1, 0.5],
    [1.72, 0.367647],
    [3, 0.25],
  ])(
    'SPEAR-06: both already there, a defender %d times as quick in control: the attacker has %d',
    (kappa, expected) => {
      const shares = pitchControl([arrives(-1000)], [arrives(-1000, kappa)], seconds(0), spearman)
      expectPrinted(shares.attackers, expected)
      expect(shares.attackers).toBeCloseTo(1 / (1 + kappa), 6)
    },
  )

  test('SPEAR-07: certain from a lead of 3.32026 s on', () => {
    expectPrinted(certainLead(spearman), 3.32026)
  })

  // Exact: integrated numerically, to two ten-thousandths. In steps of 0.04 s, stopped at 99 %: the same arithmetic, so the
  // printed digits; the table itself allows two thousandths.
  test.each([
    ['SPEAR-PC-01', 1.0, 1.5, 0.0, [0.799406, 0.200594], [0.798215, 0.193237]],
    ['SPEAR-PC-02', 1.0, 1.5, 1.2, [0.679906, 0.320094], [0.685772, 0.304712]],
    ['SPEAR-PC-03', 1.5, 1.5, 1.0, [0.5, 0.5], [0.495405, 0.495405]],
    ['SPEAR-PC-04', 2.0, 1.6, 1.5, [0.30166, 0.69834], [0.28985, 0.701013]],
  ] as const)(
    '%s: attacker there after %d s, defender after %d s, ball after %d s',
    (_, own, other, ball, exact, steps) => {
      const shares = pitchControl([arrives(own)], [arrives(other)], seconds(ball), spearman)
      expect(Math.abs(shares.attackers - exact[0])).toBeLessThanOrEqual(0.0002)
      expect(Math.abs(shares.defenders - exact[1])).toBeLessThanOrEqual(0.0002)
      const stepped = pitchControlInSteps([arrives(own)], [arrives(other)], seconds(ball), spearman)
      expect(Math.abs(stepped.attackers - steps[0])).toBeLessThanOrEqual(0.000001)
      expect(Math.abs(stepped.defenders - steps[1])).toBeLessThanOrEqual(0.000001)
    },
  )

  test('the chance of arrival is a half at the time to intercept and rises', () => {
    expect(chanceOfArrival(seconds(2), seconds(2), spearman)).toBeCloseTo(0.5, 12)
    expect(chanceOfArrival(seconds(2.45), seconds(2), spearman)).toBeCloseTo(
      1 / (1 + Math.exp(-Math.PI / Math.sqrt(3))),
      12,
    )
  })
})

// Source: Fujimura & Sugihara 2005, Systems and Computers in Japan 36(6), motion with a drag; that the region is a disc is
// confirmed by Narizuka et al. 2023, Scientific Reports 13:865. alpha 1.3 a second and 7.8 m/s are quoted from memory.
test('FS-01, Fujimura & Sugihara 2005: after 1 s the disc is 3.43519 m wide round a centre moved by 2.23836 m', () => {
  const disc = arrivalDisc(point(0, 0), point(4, 0), { topSpeed: metresPerSecond(7.8), drag: 1.3 }, seconds(1))
  expectPrinted(disc.radius, 3.43519)
  expectPrinted(disc.centre.x, 2.23836)
  expect(disc.centre.y).toBe(0)
})

describe('Taki & Hasegawa, dominant region: equal shortest times', () => {
  test('TH-01: from 0 with 3 m/s against 10 m at rest, both 4 m/s²: together after 1.25 s at 6.875 m', () => {
    const met = meetOnLine(metres(10), metresPerSecond(3), metresPerSecond(0), metresPerSecondSquared(4))
    expectPrinted(met.after, 1.25)
    expectPrinted(met.fromFirst, 6.875)
  })

  test('TH-02: equal and at rest the boundary is the perpendicular bisector: (3, 7) is 7.61577 m from both', () => {
    const [a, b] = [point(0, 0), point(10, 4)]
    expectPrinted(distance(point(3, 7), a), 7.61577)
    expectPrinted(distance(point(3, 7), b), 7.61577)
    const met = meetOnLine(distance(a, b), metresPerSecond(0), metresPerSecond(0), metresPerSecondSquared(4))
    expect(met.fromFirst).toBeCloseTo(distance(a, b) / 2, 9)
  })
})

test('RUN-EXP-01, mono-exponential sprint: 7 m/s with a second to get there is 7.94735 m and 6.05265 m/s after 2 s', () => {
  const sprint = exponentialSprint(metresPerSecond(7), seconds(1), seconds(2))
  expectPrinted(sprint.length, 7.94735)
  expectPrinted(sprint.speed, 6.05265)
})

test('a sprinter who takes two seconds to get going has, after two, run 1/e of what top speed would have covered', () => {
  const sprint = exponentialSprint(metresPerSecond(7), seconds(2), seconds(2))
  expect(sprint.length).toBeCloseTo((7 * 2) / Math.E, 9)
  expect(sprint.speed).toBeCloseTo(7 * (1 - 1 / Math.E), 9)
})

test('BALL-04, rigid-body mechanics of a thin shell: 12 m/s without spin on friction 0.4 rolls at 7.2 m/s after 11.7431 m', () => {
  const ball = slideToRoll(metresPerSecond(12), 0.4)
  expectPrinted(ball.rollingSpeed, 7.2)
  expectPrinted(ball.slidesFor, 1.22324)
  expectPrinted(ball.slidesOver, 11.7431)
})

test('ROLL-EXP-01, linear drag v = v₀ − kx: 15 m in 1.88001 s, 6.25 m/s then, 40 m at most', () => {
  const ball = { releaseSpeed: metresPerSecond(10), drag: 0.25 }
  expectPrinted(draggedDuration(ball, metres(15))!, 1.88001)
  expectPrinted(draggedSpeed(ball, metres(15)), 6.25)
  expectPrinted(draggedReach(ball), 40)
  expect(draggedDuration(ball, metres(40))).toBeNull()
  expect(draggedSpeed(ball, metres(41))).toBe(0)
})

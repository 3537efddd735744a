/**
 * Random numbers that are a function of where they are used: (seed, run, step, quantity). Nothing is consumed, so two
 * patterns meet the same error at the same step of the same run whatever else happens in them, and a run can be played
 * alone. Only whole 32-bit arithmetic and + − × ÷ √, so that every engine gives the same bits.
 */

/** Spreads a change of any bit over all: the finaliser of MurmurHash3 (Austin Appleby, public domain), one to one. */
export function mixBits(value: number): number {
  let bits = value | 0
  bits = Math.imul(bits ^ (bits >>> 16), 0x85ebca6b)
  bits = Math.imul(bits ^ (bits >>> 13), 0xc2b2ae35)
  return bits ^ (bits >>> 16)
}

/** The two words of a run: the first differs between any two runs of a seed, the second is mixed on its own. */
export function firstWord(seed: number, run: number): number {
  return mixBits(mixBits(seed ^ 0x3c6ef372) + Math.imul(run, 0x9e3779b1))
}

export function secondWord(seed: number, run: number): number {
  return mixBits(mixBits(seed + 0x1b873593) ^ Math.imul(run + 1, 0x7feb352d))
}

/** A run holds at most so many quantities a step. */
const QUANTITIES = 32

/** 32 bits for one quantity of one step. */
export function bitsFor(first: number, second: number, step: number, quantity: number): number {
  return mixBits(mixBits(first + Math.imul(step * QUANTITIES + quantity + 1, 0x85ebca77)) ^ second)
}

/** A standard normal deviate for one quantity of one step. */
export function deviateFor(first: number, second: number, step: number, quantity: number): number {
  return normalFromBits(bitsFor(first, second, step, quantity))
}

/**
 * Standard normal quantile of (bits + ½)/2³², bits read as whole and unsigned: exactly odd about the middle. Wichura 1988,
 * "Algorithm AS 241: The percentage points of the normal distribution", Applied Statistics 37(3), 477–484, PPND16 (about
 * 16 digits); its far tail, beyond 10⁻¹¹, cannot occur with 32 bits. The logarithm it needs is summed by hand.
 */
export function normalFromBits(bits: number): number {
  const whole = bits >>> 0
  const upper = whole >= 0x80000000
  const rank = upper ? 0xffffffff - whole : whole
  const share = (rank + 0.5) / 0x100000000
  const off = share - 0.5
  const quantile = off < -0.425 ? tailQuantile(rank) : off * middleRatio(0.180625 - off * off)
  return upper ? -quantile : quantile
}

function middleRatio(r: number): number {
  const above =
    ((((((2509.0809287301227 * r + 33430.57558358813) * r + 67265.7709270087) * r + 45921.95393154987) * r +
      13731.69376550946) *
      r +
      1971.5909503065513) *
      r +
      133.14166789178438) *
      r +
    3.3871328727963665
  const below =
    ((((((5226.495278852854 * r + 28729.085735721943) * r + 39307.89580009271) * r + 21213.794301586597) * r +
      5394.196021424751) *
      r +
      687.1870074920579) *
      r +
      42.31333070160091) *
      r +
    1
  return above / below
}

function tailQuantile(rank: number): number {
  const r = Math.sqrt(-logOfShare(rank)) - 1.6
  const above =
    ((((((0.0007745450142783414 * r + 0.022723844989269184) * r + 0.2417807251774506) * r + 1.2704582524523684) * r +
      3.6478483247632045) *
      r +
      5.769497221460691) *
      r +
      4.630337846156546) *
      r +
    1.4234371107496835
  const below =
    ((((((1.0507500716444169e-9 * r + 0.0005475938084995345) * r + 0.015198666563616457) * r + 0.14810397642748008) *
      r +
      0.6897673349851) *
      r +
      1.6763848301838038) *
      r +
      2.053191626637759) *
      r +
    1
  return -above / below
}

const LOG_TWO = Math.LN2
const ROOT_TWO = Math.SQRT2

/** Natural logarithm of (rank + ½)/2³²: the power of two is counted, the rest summed by the series of the area tangent. */
function logOfShare(rank: number): number {
  const power = rank === 0 ? -1 : 31 - Math.clz32(rank)
  const rest = rank === 0 ? 1 : (rank + 0.5) / ((1 << power) >>> 0)
  const halved = rest > ROOT_TWO
  const m = halved ? rest / 2 : rest
  const z = (m - 1) / (m + 1)
  const zz = z * z
  const series =
    ((((((((zz / 19 + 1 / 17) * zz + 1 / 15) * zz + 1 / 13) * zz + 1 / 11) * zz + 1 / 9) * zz + 1 / 7) * zz + 1 / 5) *
      zz +
      1 / 3) *
      zz +
    1
  return 2 * z * series + (power + (halved ? 1 : 0) - 32) * LOG_TWO
}

/** A quarter turn: nobody kicks backwards by mistake. */
const RIGHT_ANGLE = Math.PI / 2

/** One over the factorials, with the signs of the sine's series. */
const S3 = -1 / 6
const S5 = 1 / 120
const S7 = -1 / 5040
const S9 = 1 / 362_880
const S11 = -1 / 39_916_800
const S13 = 1 / 6_227_020_800
const S15 = -1 / 1_307_674_368_000
const S17 = 1 / 355_687_428_096_000

/** Sine of an angle in radians, held to a quarter turn either way, by its power series (exact to 10⁻¹³). */
export function sineOf(angle: number): number {
  const x = angle > RIGHT_ANGLE ? RIGHT_ANGLE : Math.max(angle, -RIGHT_ANGLE)
  const q = x * x
  const far = ((S17 * q + S15) * q + S13) * q + S11
  return x * (((((far * q + S9) * q + S7) * q + S5) * q + S3) * q + 1)
}

/** Cosine to a sine of an angle within a quarter turn. */
export function cosineOf(sine: number): number {
  return Math.sqrt(Math.max(0, 1 - sine * sine))
}

// Branch cover of one pattern: all its looks against one, two and three X on a 1 m grid of a 7v7 half. The floor is a
// kernel in flat arrays that asks the same of every place and every ball roughly: the margin at each half metre of twelve, no more.
import { coverOf } from '../../packages/domain/src/check/index'
import { nominalSpace, type Space } from '../../packages/domain/src/pitch/index'
import { metresOf, millimetres } from '../../packages/domain/src/quantities/index'
import { DEMO_PATTERNS } from '../../prisma/demo/patterns/index'

const RUNS = 41
const WARM_UPS = 20
const GOAL_MILLISECONDS = 50

const whole = nominalSpace('us-7v7')
const half: Space = {
  ...whole,
  covers: 'half',
  lengthMm: millimetres(Math.round(whole.lengthMm / 2)),
  goals: whole.goals.filter((goal) => goal.end === 'own'),
}
const patterns = DEMO_PATTERNS.filter((pattern) => pattern.formatId === 'us-7v7')

function medianMilliseconds(work: () => void): number {
  const times: number[] = []
  for (let run = -WARM_UPS; run < RUNS; run++) {
    const from = performance.now()
    work()
    if (run >= 0) times.push(performance.now() - from)
  }
  return times.sort((a, b) => a - b)[Math.floor(RUNS / 2)] ?? Number.NaN
}

const HALF_METRES = 24

/** Every metre of the half against so many balls of twelve metres, steady at 5 m/s, and X who run as fast. */
function floorMilliseconds(balls: number): number {
  const rows = Math.floor(metresOf(half.lengthMm))
  const columns = Math.floor(metresOf(half.widthMm))
  const starts = Float64Array.from({ length: balls * 2 }, (_, index) => (index * 7) % 15)
  const marks = new Int32Array(rows * columns)
  return medianMilliseconds(() => {
    for (let ball = 0; ball < balls; ball++) {
      const x = starts[ball * 2] ?? 0
      const y = starts[ball * 2 + 1] ?? 0
      for (let place = 0; place < marks.length; place++) {
        const up = (place % rows) + 0.5 - x
        const right = Math.floor(place / rows) - columns / 2 - y
        let least = Number.POSITIVE_INFINITY
        for (let cut = 1; cut <= HALF_METRES; cut++) {
          const ahead = up - cut / 2
          const margin = Math.sqrt(ahead * ahead + right * right) / 5 - cut / 10
          if (margin < least) least = margin
        }
        if (least < 0.3) marks[place] = (marks[place] ?? 0) | (1 << ball)
      }
    }
  })
}

const slowest = patterns
  .map((pattern) => {
    const covers = coverOf(pattern, half)
    if (covers.some((cover) => cover.counts.length !== 3 || cover.places.length < 500)) {
      throw new Error(`${pattern.title} is not covered on a whole half`)
    }
    const balls = covers.flatMap((cover) => cover.ways.flatMap((way) => way.stepIds)).length
    return { value: medianMilliseconds(() => coverOf(pattern, half)), floor: floorMilliseconds(balls) }
  })
  .sort((a, b) => b.value - a.value)[0]
if (slowest === undefined) throw new Error('there is no 7v7 pattern to cover')
const { value, floor } = slowest
const round = (figure: number) => Math.round(figure * 100) / 100
process.stdout.write(
  `${JSON.stringify({
    figure: 'cover.3x',
    value: round(value),
    unit: 'ms',
    floor: Math.round(floor * 1000) / 1000,
    ratio: round(value / floor),
    goal: GOAL_MILLISECONDS,
  })}\n`,
)

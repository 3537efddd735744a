// check.growth: how the cost of a check grows with steps, with players and with runs, each alone: the exponent of a straight
// line through the logarithms of size and time. The patterns grown are silent where one could talk, so that what grows is the
// measuring. 1 is proportional; parts that do not grow with a size press its exponent down.
import { checkPattern } from '../../packages/domain/src/check/index'
import type { PatternDocument, Step } from '../../packages/domain/src/pattern/index'
import { nominalSpace } from '../../packages/domain/src/pitch/index'
import { patternPlayed } from './check-pattern-played'

const GOAL = 1.1
const ROUNDS = 60
const WARM_UPS = 15
const space = nominalSpace(patternPlayed.formatId)
const trunk: PatternDocument = { ...patternPlayed, looks: [] }

/** The ten steps again and again; the last one's carrier has the ball, so the first of the next ten is played by them. */
function withSteps(count: number): PatternDocument {
  const steps = Array.from({ length: count }, (_, index): Step => {
    const from = index % 2 === 0 ? 'LCB' : 'RCB'
    const to = index % 2 === 0 ? 'RCB' : 'LCB'
    return {
      stepId: `s${index}`,
      action: { kind: 'pass', from, to, into: { kind: 'feet' }, height: 'ground', touches: 2, foot: 'either' },
      runs: trunk.steps[index % 10]?.runs.filter((run) => run.position !== from && run.position !== to) ?? [],
      point: '',
    }
  })
  return { ...trunk, steps }
}

/** Passes among the first three; everyone else stands. */
function withPlayers(count: number): PatternDocument {
  const kept = ['LCB', 'RCB', 'GK', ...trunk.positions.map((each) => each.position)].slice(0, count)
  const positions = trunk.positions.filter(({ position }) => new Set(kept).has(position))
  return { ...withSteps(10), positions, steps: withSteps(10).steps.map((step) => ({ ...step, runs: [] })) }
}

/** So many runs in each of ten steps, of players who have no part in the ball. */
function withRuns(count: number): PatternDocument {
  const movers = trunk.positions.filter(({ position }) => position !== 'LCB' && position !== 'RCB')
  const steps = withSteps(10).steps.map((step, index) => ({
    ...step,
    runs: movers.slice(0, count).map(({ position, spot }) => ({
      position,
      to: index % 2 === 0 ? { ...spot, upMm: (spot.upMm + 2000) as typeof spot.upMm } : spot,
      start: 'with-the-ball' as const,
    })),
  }))
  return { ...withSteps(10), steps }
}

function exponentOf(sizes: readonly number[], grown: (size: number) => PatternDocument): number {
  const documents = sizes.map(grown)
  const times = sizes.map((): number[] => [])
  // All sizes in every round, so that a busy machine slows all alike.
  for (let round = -WARM_UPS; round < ROUNDS; round += 1) {
    documents.forEach((document, index) => {
      const from = performance.now()
      checkPattern(document, space)
      if (round >= 0) times[index]?.push(performance.now() - from)
    })
  }
  const points = times.map((each, index) => {
    const median = each.sort((one, other) => one - other)[Math.floor(each.length / 2)]!
    return { x: Math.log(sizes[index]!), y: Math.log(median) }
  })
  const mean = (pick: (each: { x: number; y: number }) => number) =>
    points.reduce((sum, each) => sum + pick(each), 0) / points.length
  const [x, y] = [mean((each) => each.x), mean((each) => each.y)]
  return mean((each) => (each.x - x) * (each.y - y)) / mean((each) => (each.x - x) ** 2)
}

const rounded = (value: number) => Math.round(value * 100) / 100
const exponents = {
  steps: rounded(exponentOf([10, 20, 40, 80, 160], withSteps)),
  players: rounded(exponentOf([3, 5, 7, 9, 11], withPlayers)),
  runs: rounded(exponentOf([1, 2, 4, 6, 9], withRuns)),
}
process.stdout.write(
  `${JSON.stringify({
    figure: 'check.growth',
    value: Math.max(...Object.values(exponents)),
    unit: 'exponent',
    floor: null,
    ratio: null,
    goal: GOAL,
    ...exponents,
  })}\n`,
)

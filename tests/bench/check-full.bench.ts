// check.full: one whole check (timeline, every note, the remedy that is tried) of a pattern of ten steps, eleven players and a
// look, against a floor written for this one purpose. The two must say the same notes before a time counts.
import { BALL_DECELERATION, checkPattern, DEFAULT_LIMITS, profileFor } from '../../packages/domain/src/check/index'
import { nominalSpace } from '../../packages/domain/src/pitch/index'
import { FLOOR_RULES, makeCheckFloor } from './check-floor'
import { STARTS } from './check-floor-arrays'
import { patternPlayed } from './check-pattern-played'

const ROUNDS = 2000
const WARM_UPS = 4000
const GOAL = 2

const space = nominalSpace(patternPlayed.formatId)
const floor = makeCheckFloor({
  document: patternPlayed,
  space,
  profile: profileFor(patternPlayed.ageGroup),
  limits: DEFAULT_LIMITS,
  deceleration: BALL_DECELERATION.normal.value,
})

/** A floor that finds something else would be no floor: the same notes, values, remedies and times. */
function compare(): number {
  const { notes, timeline } = checkPattern(patternPlayed, space)
  floor.run()
  const ours = notes.map((note) => {
    const start = note.remedy?.kind === 'start-run' ? note.remedy.start : null
    if (note.remedy !== null && start === null) throw new Error(`the floor tries no remedy as ${note.remedy.kind}`)
    return JSON.stringify([note.code, note.stepId, note.value, start])
  })
  const { count, rule, step, value, start } = floor.notes
  const found = Array.from({ length: count }, (_, index) =>
    JSON.stringify([
      FLOOR_RULES[rule[index]!],
      floor.stepIds[step[index]!] ?? null,
      value[index],
      STARTS[start[index]!] ?? null,
    ]),
  )
  if (JSON.stringify(ours.sort()) !== JSON.stringify(found.sort())) {
    throw new Error(`the floor says other notes:\n${found.join('\n')}\nthan the check:\n${ours.join('\n')}`)
  }
  const times = timeline.steps.flatMap((each) => [each.startsAt, each.ballArrivesAt, each.receivedAt])
  const off = Math.max(...times.map((time, index) => Math.abs(time - (floor.trunkTimes[index] ?? Number.NaN))))
  if (!(off < 1e-9)) throw new Error(`the floor's times are off by ${off} s`)
  return count
}

function microseconds(work: () => number): number {
  const from = performance.now()
  const notes = work()
  const took = (performance.now() - from) * 1000
  if (notes !== count) throw new Error(`${notes} notes instead of ${count}`)
  return took
}

const median = (values: readonly number[]) =>
  [...values].sort((one, other) => one - other)[Math.floor(values.length / 2)]!
/** A floor's run is too short for the clock alone, so a round of it is many; the check's are as many, for the same reason. */
const REPEATS = 20

const count = compare()
const rounds = []
// Rounds of both alternate, so that a busy machine slows both alike.
for (let round = -WARM_UPS / REPEATS; round < ROUNDS / REPEATS; round += 1) {
  const times = { ours: [] as number[], floor: [] as number[] }
  for (let repeat = 0; repeat < REPEATS; repeat += 1) {
    times.floor.push(microseconds(() => floor.run()))
    times.ours.push(microseconds(() => checkPattern(patternPlayed, space).notes.length))
  }
  if (round >= 0) rounds.push({ ours: median(times.ours), floor: median(times.floor) })
}
const rounded = (value: number) => Math.round(value * 10) / 10
process.stdout.write(
  `${JSON.stringify({
    figure: 'check.full',
    value: rounded(median(rounds.map((round) => round.ours))),
    unit: 'µs',
    floor: rounded(median(rounds.map((round) => round.floor))),
    ratio: rounded(median(rounds.map((round) => round.ours / round.floor))),
    goal: GOAL,
    notes: count,
    players: patternPlayed.positions.length,
  })}\n`,
)

// check.garbage: what a check leaves behind once everything it made is collected, from the two hundredth run to the thousandth,
// each with a player moved as while dragging. The notes themselves are let go: only what the check keeps of its own counts.
// Without optimised code, whose own growth while an engine warms up (about 200 bytes a run here) would drown that.
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { checkPattern } from '../../packages/domain/src/check/index'
import { nominalSpace } from '../../packages/domain/src/pitch/index'
import { patternDragged } from './check-pattern-played'

const FIRST = 200
const LAST = 1000
const GOAL_BYTES = 200

setFlagsFromString('--no-opt')
setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc') as () => void

function heapBytes(): number {
  // Twice: what the first collection only marks as dead the second one frees.
  collect()
  collect()
  return process.memoryUsage().heapUsed
}

function bytesKept(checkOnce: (run: number) => void): number {
  let run = 0
  for (; run < FIRST; run += 1) checkOnce(run)
  const before = heapBytes()
  for (; run < LAST; run += 1) checkOnce(run)
  return (heapBytes() - before) / (LAST - FIRST)
}

let said = 0
function check(run: number): void {
  const document = patternDragged(run)
  said += checkPattern(document, nominalSpace(document.formatId)).notes.length
}

const value = bytesKept(check)
if (said === 0) throw new Error('the checks said nothing: they did not run')
// What does keep something must be seen, or the figure above means nothing.
const kept: Float64Array[] = []
const leaking = bytesKept((run) => {
  check(run)
  kept.push(new Float64Array(6).fill(run))
})
if (!(leaking > 48 * 1.5) || kept.length !== LAST)
  throw new Error(`a leak of 48 bytes and more was measured as ${leaking}`)
process.stdout.write(
  `${JSON.stringify({
    figure: 'check.garbage',
    value: Math.round(value * 10) / 10,
    unit: 'bytes',
    floor: null,
    ratio: null,
    goal: GOAL_BYTES,
  })}\n`,
)

import { addLeg } from './legs'
import { DEVIATE, drawDeviate, type Memory, REACTION } from './memory'
import type { Program } from './program'
import { FIRST_RUN } from './quantities-erred'

/** Sets a reaction with its error; it never comes before its cue. */
export function drawReaction(program: Program, memory: Memory, step: number, quantity: number): void {
  const { now } = memory
  now[REACTION] = program.reaction
  if (program.reactionShare === 0) return
  drawDeviate(memory, step, quantity)
  now[REACTION] = program.reaction * Math.max(0, 1 + program.reactionShare * now[DEVIATE]!)
}

/** Starts the runs of a step that wait for this cue: a reaction after it, or at once for the player who gives it. */
export function startRuns(program: Program, memory: Memory, step: number, cue: number, at: number): void {
  if ((program.cues[step]! & (1 << cue)) === 0) return
  const { now } = memory
  const first = program.runsFrom[step]!
  const end = program.runsFrom[step + 1]!
  for (let run = first; run < end; run += 1) {
    if (program.runCue[run] !== cue) continue
    if (program.runAtOnce[run] === 1) now[REACTION] = 0
    else drawReaction(program, memory, step, FIRST_RUN + run - first)
    const starts = at + now[REACTION]!
    addLeg(program, memory, program.runner[run]!, program.runX[run]!, program.runY[run]!, starts, program.topSpeed)
  }
}

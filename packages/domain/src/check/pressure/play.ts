import type { Point } from '../../geometry'
import { type Answer, type Look, listBranches, type PatternDocument } from '../../pattern'
import { assert, type Seconds } from '../../quantities'
import type { Setting, State } from '../play-step'
import { playStates, type Timeline, timelineAfter } from '../timeline'
import type { PressSetting } from './press-setting'

/** One way through a pattern, with the looks still to come and where each of their answers leads. */
export type Play = {
  readonly document: PatternDocument
  readonly timeline: Timeline
  /** Before each step and after the last. */
  readonly states: readonly State[]
  readonly turns: readonly Turn[]
}

export type Turn = {
  readonly look: Look
  /** The step before which the look is asked. */
  readonly index: number
  /** Worked out only when it is taken: most ways through many looks never are. */
  readonly answers: readonly { readonly answer: Answer; readonly play: () => Play }[]
}

/** A pattern with every way its looks can lead; after an answer that rejoins, the looks behind it are asked again. */
export function playOf(document: PatternDocument, setting: Setting): Play {
  const states = playStates(document, setting)
  const branches = listBranches(document)
  const turns = document.looks.map((look): Turn => {
    const index = document.steps.findIndex((step) => step.stepId === look.stepId)
    return {
      look,
      index,
      answers: branches
        .filter((branch) => branch.look === look)
        .map((branch) => ({
          answer: branch.answer,
          play: once(() => playOf(withLaterLooks(branch.document, document, look, index), setting)),
        })),
    }
  })
  return { document, timeline: timelineAfter(states.at(-1)!), states, turns }
}

function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | null = null
  return () => {
    made ??= { value: make() }
    return made.value
  }
}

/** A branch is written without looks; those of the trunk behind the one it answers still hold. */
function withLaterLooks(branch: PatternDocument, trunk: PatternDocument, asked: Look, index: number): PatternDocument {
  const later = new Set(branch.steps.slice(index).map((step) => step.stepId))
  return { ...branch, looks: trunk.looks.filter((look) => look !== asked && later.has(look.stepId)) }
}

/** The play that goes on from a step, after the looks that hang before it. */
export function nextPlay(
  play: Play,
  index: number,
  opponentsAt: (at: Seconds) => readonly Point[],
  setting: PressSetting,
): Play {
  for (const turn of play.turns) {
    if (turn.index !== index) continue
    const step = play.timeline.steps[index]
    assert(step !== undefined, 'a look hangs on a step that is played')
    const chosen = setting.choose(turn.look, play, opponentsAt(step.startsAt))
    const led = turn.answers.find((each) => each.answer === chosen)
    if (led !== undefined) return led.play()
  }
  return play
}

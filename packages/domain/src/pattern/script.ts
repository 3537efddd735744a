import type { Spot } from '../pitch'
import { unreachable } from '../quantities'
import { actorOf, placeOf, receiverOf } from './actions'
import type { Answer, BallAction, PatternDocument, Step } from './document'
import { fillTemplate, type ScriptSentence, type Slot, type Slots } from './script-template'
import { ENGLISH, type ScriptWords } from './script-words'

/** One step in sentences: the ball first, then each run. */
export type ScriptStep = {
  readonly stepId: string
  readonly number: number
  readonly sentences: readonly ScriptSentence[]
  /** The short sentences in a row: "GK passes to RCB, to feet, two touches. RW runs as GK plays." */
  readonly text: string
  readonly fullText: string
  /** What the coach calls; empty where there is nothing to say. */
  readonly point: string
}

/** The pattern in plain sentences: the drawing in words, and the other way to edit it. */
export function scriptSentences(document: PatternDocument, words: ScriptWords = ENGLISH): readonly ScriptStep[] {
  return document.steps.map((step, index) => scriptStep(document, step, index + 1, `/steps/${index}`, words))
}

export type ScriptAnswer = {
  /** A, B, C … as lettered on the drawing. */
  readonly letter: string
  readonly sign: ScriptSentence
  readonly steps: readonly ScriptStep[]
  /** Where it goes on: a later step of the trunk, or out. */
  readonly onward: ScriptSentence
}

export type ScriptLook = {
  readonly lookId: string
  readonly stepId: string
  readonly sentence: ScriptSentence
  readonly answers: readonly ScriptAnswer[]
}

/** What the player on the ball looks for before a step, with the answers in the order they are tried. */
export function scriptLooks(document: PatternDocument, words: ScriptWords = ENGLISH): readonly ScriptLook[] {
  return document.looks.map((look, lookIndex) => {
    const pointer = `/looks/${lookIndex}`
    const trunkNumber = document.steps.findIndex((step) => step.stepId === look.stepId) + 1
    return {
      lookId: look.lookId,
      stepId: look.stepId,
      sentence: fillTemplate(words.look, { actor: { text: look.by, pointer: `${pointer}/by` } }),
      answers: look.answers.map((answer, index) =>
        scriptAnswer(document, answer, index, trunkNumber, `${pointer}/answers/${index}`, words),
      ),
    }
  })
}

function scriptAnswer(
  document: PatternDocument,
  answer: Answer,
  index: number,
  firstNumber: number,
  pointer: string,
  words: ScriptWords,
): ScriptAnswer {
  const sign = words.signs[answer.sign].replace('{about}', answer.about ?? '')
  const back = document.steps.findIndex((step) => step.stepId === answer.rejoins)
  const number: Slot = { text: String(back + 1), pointer: `${pointer}/rejoins` }
  return {
    letter: String.fromCharCode('A'.charCodeAt(0) + index),
    sign: fillTemplate(words.answer, { sign: { text: sign, pointer: `${pointer}/sign` } }),
    steps: answer.steps.map((step, at) =>
      scriptStep(document, step, firstNumber + at, `${pointer}/steps/${at}`, words),
    ),
    onward: back < 0 ? fillTemplate(words.exit, {}) : fillTemplate(words.rejoin, { number }),
  }
}

function scriptStep(
  document: PatternDocument,
  step: Step,
  number: number,
  pointer: string,
  words: ScriptWords,
): ScriptStep {
  const actor: Slot = { text: actorOf(step.action), pointer: null }
  const runs = step.runs.map((run, index) =>
    fillTemplate(words.runs[run.start], {
      runner: { text: run.position, pointer: `${pointer}/runs/${index}/position` },
      place: { text: sayPlace(run.to, words), pointer: `${pointer}/runs/${index}/to` },
      actor,
    }),
  )
  const sentences = [
    fillTemplate(
      templateOf(document, step.action, words),
      actionSlots(document, step.action, `${pointer}/action`, words),
    ),
    ...runs,
  ]
  return {
    stepId: step.stepId,
    number,
    sentences,
    text: sentences.map((sentence) => sentence.text).join(' '),
    fullText: sentences.map((sentence) => sentence.fullText).join(' '),
    point: step.point,
  }
}

function templateOf(document: PatternDocument, action: BallAction, words: ScriptWords): string {
  if (action.kind !== 'shot') return words.actions[action.kind]
  const target = document.targets.find((each) => each.targetId === action.target)
  return target?.kind === 'gate' ? words.throughGate : words.actions.shot
}

function actionSlots(document: PatternDocument, action: BallAction, pointer: string, words: ScriptWords): Slots {
  const actor: Slot = { text: actorOf(action), pointer: `${pointer}/${'from' in action ? 'from' : 'by'}` }
  const receiver = receiverOf(action)
  const spot = placeOf(action)
  const shared: Slots = {
    actor,
    receiver: receiver === null ? null : { text: receiver, pointer: `${pointer}/to` },
    place:
      spot === null
        ? null
        : { text: sayPlace(spot, words), pointer: 'into' in action ? `${pointer}/into/spot` : `${pointer}/to` },
    ...('into' in action ? { into: { text: words.into[action.into.kind], pointer: `${pointer}/into` } } : {}),
  }
  switch (action.kind) {
    case 'pass':
      return {
        ...shared,
        height: action.height === 'air' ? { text: words.air, pointer: `${pointer}/height` } : null,
        touches: { text: words.touches[action.touches], pointer: `${pointer}/touches` },
        foot: footSlot(action.foot, pointer, words),
      }
    case 'set-back':
      return { ...shared, foot: footSlot(action.foot, pointer, words) }
    case 'carry':
      return {
        ...shared,
        obstacle: action.at === null ? null : obstacleSlot(document, action.at, `${pointer}/at`, words),
      }
    case 'dribble-past':
      return { ...shared, obstacle: obstacleSlot(document, action.past, `${pointer}/past`, words) }
    case 'shot':
      return { ...shared, target: targetSlot(document, action.target, `${pointer}/target`, words) }
    case 'throw':
    case 'roll':
    case 'dummy':
      return shared
    default:
      return unreachable(action)
  }
}

function footSlot(foot: 'near' | 'far' | 'either', pointer: string, words: ScriptWords): Slot | null {
  return foot === 'either' ? null : { text: words.foot[foot], pointer: `${pointer}/foot` }
}

function obstacleSlot(document: PatternDocument, id: string, pointer: string, words: ScriptWords): Slot | null {
  const obstacle = document.obstacles.find((each) => each.obstacleId === id)
  return obstacle === undefined ? null : { text: words.obstacle[obstacle.kind], pointer }
}

function targetSlot(document: PatternDocument, id: string, pointer: string, words: ScriptWords): Slot | null {
  const target = document.targets.find((each) => each.targetId === id)
  return target === undefined ? null : { text: words.target[target.kind], pointer }
}

/** A spot as a coach would say it: the landmark, with what lies between in whole metres. */
export function sayPlace(spot: Spot, words: ScriptWords = ENGLISH): string {
  const landmark = words.landmarks[spot.landmark]
  const up = offsetText(spot.upMm, words.up, words.down)
  const right = offsetText(spot.rightMm, words.right, words.left)
  const offset = [up, right].filter((text) => text !== null).join(words.and)
  return offset === '' ? landmark : words.place.replace('{offset}', offset).replace('{landmark}', landmark)
}

function offsetText(offsetMm: number, positive: string, negative: string): string | null {
  const length = Math.round(Math.abs(offsetMm) / 1000)
  return length === 0 ? null : (offsetMm > 0 ? positive : negative).replace('{metres}', String(length))
}

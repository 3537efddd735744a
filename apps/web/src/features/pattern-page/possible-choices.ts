import { formatOf } from '@espalier/domain/formats'
import {
  type Answer,
  actorOf,
  ENGLISH,
  formationsOf,
  GOALKEEPER,
  type PatternDocument,
  receiverOf,
  SIGNS,
  type Step,
} from '@espalier/domain/pattern'
import { LANDMARKS, type Landmark, landmarkPoint, nominalSpace } from '@espalier/domain/pitch'
import { patternsMessage } from '../../messages/patterns'
import type { PartChoice } from '../writing/blank'
import { ACTION_KINDS } from './change-action'
import { type FoundStep, holderAfter, stepsOf } from './step-path'

// What a form offers. What is impossible stays in the list with its reason, so that nobody looks for it in vain.

const KIND_WORDS = {
  pass: 'kindPass',
  'set-back': 'kindSetBack',
  carry: 'kindCarry',
  'dribble-past': 'kindDribble',
  throw: 'kindThrow',
  roll: 'kindRoll',
  dummy: 'kindDummy',
  shot: 'kindShot',
} as const satisfies Record<Step['action']['kind'], string>

export function kindChoices(
  document: PatternDocument,
  found: FoundStep,
): readonly PartChoice<Step['action']['kind']>[] {
  return ACTION_KINDS.map((value) => ({
    value,
    label: patternsMessage(KIND_WORDS[value]),
    off: value === found.step.action.kind ? null : whyNotKind(document, found, value),
  }))
}

function whyNotKind(
  document: PatternDocument,
  { step, before }: FoundStep,
  kind: Step['action']['kind'],
): string | null {
  const isRestart = before.length === 0
  const { restart } = document
  const inHands = restart === 'goalkeeper-hands' || restart === 'open-play'
  switch (kind) {
    case 'throw':
      if (isRestart && restart === 'throw-in') return null
      return isRestart && inHands && actorOf(step.action) === GOALKEEPER ? null : patternsMessage('whyHands')
    case 'roll':
      return isRestart && inHands && actorOf(step.action) === GOALKEEPER ? null : patternsMessage('whyHands')
    case 'carry':
      return isRestart && !inHands ? patternsMessage('whyRestartPlayed') : null
    case 'dribble-past':
      if (document.obstacles.length === 0) return patternsMessage('whyNothingToPass')
      return isRestart && !inHands ? patternsMessage('whyRestartPlayed') : null
    case 'dummy':
    case 'set-back':
      return isRestart ? patternsMessage('whyBallNotComing') : null
    case 'shot':
      return document.targets.length === 0 ? patternsMessage('whyNoTarget') : null
    case 'pass':
      return null
  }
}

/** Who plays the ball: the taker of the restart is free, from then on whoever has it. */
export function actorChoices(document: PatternDocument, { before, step }: FoundStep): readonly PartChoice[] {
  const holder = holderAfter(before)
  const onlyKeeper = before.length === 0 && document.restart === 'goalkeeper-hands'
  return positionChoices(document, actorOf(step.action), (position) => {
    if (onlyKeeper) return position === GOALKEEPER ? null : patternsMessage('whyInHands', { keeper: GOALKEEPER })
    if (holder === undefined || position === holder) return null
    return holder === null ? patternsMessage('whyNobodyHas') : patternsMessage('whyHasNot', { holder })
  })
}

export function receiverChoices(document: PatternDocument, { step }: FoundStep): readonly PartChoice[] {
  const actor = actorOf(step.action)
  return positionChoices(document, receiverOf(step.action), (position) =>
    position === actor ? patternsMessage('whyHasBall') : null,
  )
}

/** Who can run in this step besides those who already do. `own` is the run being changed. */
export function runnerChoices(document: PatternDocument, step: Step, own: number | null): readonly PartChoice[] {
  const carrier = step.action.kind === 'carry' || step.action.kind === 'dribble-past' ? step.action.by : null
  const current = own === null ? null : (step.runs[own]?.position ?? null)
  return positionChoices(document, current, (position) => {
    if (position === carrier) return patternsMessage('whyCarries')
    const taken = step.runs.some((run, index) => index !== own && run.position === position)
    return taken ? patternsMessage('whyRunsAlready') : null
  })
}

/** The likeliest next runner: not who plays or gets the ball nor the goalkeeper, on the pattern's side, furthest up. */
export function likelyRunner(document: PatternDocument, step: Step): string | null {
  const busy = [actorOf(step.action), receiverOf(step.action), GOALKEEPER]
  const free = runnerChoices(document, step, null).flatMap(({ value, off }) => (off === null ? [value] : []))
  const unbusy = free.filter((position) => !busy.includes(position)).reverse()
  const side = document.writtenFor === 'left' ? 'L' : 'R'
  return unbusy.find((position) => position.startsWith(side)) ?? unbusy[0] ?? free[0] ?? null
}

export function obstacleChoices(document: PatternDocument): readonly PartChoice[] {
  return document.obstacles.map(({ obstacleId, kind }) => ({
    value: obstacleId,
    label: patternsMessage('obstacleNamed', { kind: patternsMessage(kind), id: obstacleId }),
    off: null,
  }))
}

export function targetChoices(document: PatternDocument): readonly PartChoice[] {
  return document.targets.map(({ targetId, kind }) => ({
    value: targetId,
    label: patternsMessage('targetNamed', { kind: patternsMessage(TARGET_WORDS[kind]), id: targetId }),
    off: null,
  }))
}

export const TARGET_WORDS = {
  goal: 'goal',
  'small-goal': 'smallGoal',
  gate: 'gate',
} as const satisfies Record<PatternDocument['targets'][number]['kind'], string>

/** Landmarks of the format; one that the format has not stays with its reason. */
export function landmarkChoices(document: PatternDocument): readonly PartChoice<Landmark>[] {
  const pitch = nominalSpace(document.formatId)
  const format = formatOf(document.formatId).name
  return LANDMARKS.map((value) => ({
    value,
    label: ENGLISH.landmarks[value],
    off: landmarkPoint(pitch, value) === null ? patternsMessage('whyNoLandmark', { format }) : null,
  }))
}

export function formationChoices(document: PatternDocument): readonly PartChoice[] {
  const offered = formationsOf(document.formatId)
  const all = offered.includes(document.formation) ? offered : [document.formation, ...offered]
  return all.map((value) => ({ value, label: value, off: null }))
}

/** Signs of an answer; only the last one is for when all is shut. */
export function signChoices(answer: Answer, isExit: boolean): readonly PartChoice<Answer['sign']>[] {
  return SIGNS.map((value) => ({
    value,
    label: ENGLISH.signs[value].replace('{about}', patternsMessage('someone')),
    off:
      value === answer.sign || (value === 'all-shut') === isExit
        ? null
        : patternsMessage(isExit ? 'whyExitLast' : 'whyExitOnly'),
  }))
}

/** Where an answer goes on: out, or a later step of the trunk that is played by who then has the ball. */
export function rejoinChoices(
  document: PatternDocument,
  lookId: string,
  answer: number,
  isExit: boolean,
): readonly PartChoice[] {
  const look = document.looks.find((each) => each.lookId === lookId)
  const at = document.steps.findIndex((step) => step.stepId === look?.stepId)
  const holder = holderAfter(stepsOf(document, { kind: 'answer', lookId, answer })) ?? null
  const later = document.steps.slice(at + 1).map((step, index) => ({
    value: step.stepId,
    label: patternsMessage('rejoinsAt', { number: at + index + 2 }),
    off: isExit
      ? patternsMessage('whyExitLeads')
      : actorOf(step.action) === holder
        ? null
        : patternsMessage('whyOtherPlays', {
            actor: actorOf(step.action),
            holder: holder ?? patternsMessage('nobody'),
          }),
  }))
  return [{ value: 'exit', label: patternsMessage('rejoinsOut'), off: null }, ...later]
}

/** Every placed player, and the one named now even where they have no place any more. */
function positionChoices(
  document: PatternDocument,
  current: string | null,
  why: (position: string) => string | null,
): readonly PartChoice[] {
  const placed = document.positions.map(({ position }) => position)
  const lost = current !== null && !placed.includes(current) ? [current] : []
  return [
    ...placed.map((value) => ({ value, label: value, off: value === current ? null : why(value) })),
    ...lost.map((value) => ({ value, label: value, off: patternsMessage('whyNotPlaced') })),
  ]
}

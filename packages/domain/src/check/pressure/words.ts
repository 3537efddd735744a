import type { PatternDocument } from '../../pattern'
import { nameObstacle } from '../wording'
import type { BehaviourName } from './behaviours'
import type { Mend } from './mend'
import type { BreakKind } from './press'
import type { PressureReport, Stopped } from './pressure'
import type { StartPlace } from './start-places'

const BEHAVIOUR_WORDS = {
  'everyone-chases': 'Everyone chases the ball',
  'shuts-inside': 'The nearest curves to shut the inside',
  'shuts-outside': 'The nearest curves to shut the outside',
  'man-for-man': 'Man for man',
} satisfies Record<BehaviourName, string>

const BREAK_WORDS = {
  'cut-out': 'cuts the ball out on its way',
  'first-to-it': 'is first to the ball',
  tackled: 'is there before the ball is played on',
} satisfies Record<BreakKind, string>

/** As "Works against 2; against 3 it breaks at step 3." */
export function sayWorksAgainst(document: PatternDocument, report: PressureReport): string {
  const { worksAgainst, firstStopped, tried } = report
  if (firstStopped === null) {
    return tried === 0
      ? 'There is no place for an opponent to come from.'
      : `Works against all ${tried} that were tried.`
  }
  const breaks = `breaks at ${sayStep(document, firstStopped.stepId)}`
  return worksAgainst === 0
    ? `Against 1 it ${breaks}.`
    : `Works against ${worksAgainst}; against ${worksAgainst + 1} it ${breaks}.`
}

/** One sentence for each behaviour: how many it works against, then who stops it, from where and how. */
export function sayBehaviours(document: PatternDocument, report: PressureReport): readonly string[] {
  return report.behaviours.map(({ behaviour, stopped, worksAgainst }) => {
    const who = BEHAVIOUR_WORDS[behaviour]
    if (stopped === null) return `${who}: works against all ${worksAgainst} that were tried.`
    return `${who}: against ${stopped.opponents} it breaks at ${sayStep(document, stopped.stepId)}: ${sayBreak(document, stopped)}.`
  })
}

function sayBreak(document: PatternDocument, stopped: Stopped): string {
  return `an opponent who waited ${sayStart(document, stopped.cameFrom)} ${BREAK_WORDS[stopped.kind]}`
}

/** Where an opponent came from, as "in front of RCB" or "at pole 2". */
export function sayStart(document: PatternDocument, start: StartPlace): string {
  const obstacle = document.obstacles.find((each) => each.obstacleId === start.obstacleId)
  if (obstacle !== undefined)
    return `at ${obstacle.kind === 'pole' ? 'the ' : 'the drawn '}${nameObstacle(document, obstacle)}`
  return start.near === null ? 'at the line' : `in front of ${start.near}`
}

/** As "step 3", or "answer A before step 3" for a step of a look. */
export function sayStep(document: PatternDocument, stepId: string): string {
  const index = document.steps.findIndex((step) => step.stepId === stepId)
  if (index >= 0) return `step ${index + 1}`
  for (const look of document.looks) {
    const answer = look.answers.findIndex((each) => each.steps.some((step) => step.stepId === stepId))
    if (answer >= 0) return `answer ${String.fromCharCode(65 + answer)} before ${sayStep(document, look.stepId)}`
  }
  return 'its end'
}

/** What mends it, as a director reads it. */
export function sayMend(document: PatternDocument, mend: Mend): string {
  const step = sayStep(document, mend.stepId)
  switch (mend.kind) {
    case 'one-touch':
      return `At ${step}, ${mend.by} plays it with one touch.`
    case 'look':
      return `Before ${step}, ${mend.by} looks: ${mend.free.join(' and ')} ${mend.free.length === 1 ? 'is' : 'are'} free.`
  }
}

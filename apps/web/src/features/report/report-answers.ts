import type { CHANGE_CHIPS, GOT_OUT, RecordRow, ReportBody } from '@espalier/contract/records'
import { PRESSURES, type Pressure } from '@espalier/domain/curriculum'
import type { PlannedActivity } from '@espalier/domain/session'

export type GotOut = (typeof GOT_OUT)[number]
export type Chip = (typeof CHANGE_CHIPS)[number]

/** How far it went; not-reached is an evening on which the pattern was left out. */
export type HowFar = Pressure | 'not-reached'

/** What the coach has said so far; undefined is not said yet. */
export type ReportAnswers = {
  readonly howFar: HowFar | undefined
  readonly gotOut: GotOut | undefined
  /** A member's id; null for nobody. */
  readonly secondAdult: string | null | undefined
  readonly chips: readonly Chip[]
  readonly turnout: number
  readonly guests: number
  readonly minutes: number
  readonly stageMinutes: number
}

/** So many rungs are offered under tonight's, and one above: who climbs further had a very good evening. */
const RUNGS_BELOW = 3

/** The rungs a coach chooses from, lowest first. */
export function rungsAround(tonight: Pressure): readonly Pressure[] {
  const at = PRESSURES.indexOf(tonight)
  return PRESSURES.slice(Math.max(0, at - RUNGS_BELOW), at + 2)
}

/** What a report needs to know of the pattern it speaks of. */
export type ReportedPattern = Pick<PlannedActivity, 'stageId' | 'title' | 'pressure'>

export type ReportQuestion = 'how-far' | 'got-out' | 'second-adult'

/** The questions of this evening: an evening of games only asks who was there too, and no more. */
export function questionsOf(pattern: ReportedPattern | null, answers: ReportAnswers): readonly ReportQuestion[] {
  if (pattern === null) return ['second-adult']
  return answers.howFar === 'not-reached' ? ['how-far', 'second-adult'] : ['how-far', 'got-out', 'second-adult']
}

export function isAnswered(question: ReportQuestion, answers: ReportAnswers): boolean {
  switch (question) {
    case 'how-far':
      return answers.howFar !== undefined
    case 'got-out':
      return answers.gotOut !== undefined
    case 'second-adult':
      return answers.secondAdult !== undefined
  }
}

export type ReportOf = {
  readonly teamId: string
  readonly dateId: string
  readonly planId: string | null
  readonly pattern: ReportedPattern | null
  /** The report that this one corrects, as the club has it. */
  readonly corrects: RecordRow | null
}

/** The report as it is sent, or null while a question is open. */
export function reportBodyOf(of: ReportOf, answers: ReportAnswers): ReportBody | null {
  if (questionsOf(of.pattern, answers).some((question) => !isAnswered(question, answers))) return null
  const stageId = of.pattern?.stageId ?? null
  const { howFar, gotOut, secondAdult } = answers
  const wasTrained = stageId !== null && howFar !== undefined && howFar !== 'not-reached' && gotOut !== undefined
  const reported: ReportBody['stages'] = wasTrained
    ? [{ stageId, pressureReached: howFar, minutes: answers.stageMinutes as ReportBody['minutes'], gotOut }]
    : []
  return {
    teamId: of.teamId,
    dateId: of.dateId,
    planId: of.planId,
    turnout: answers.turnout,
    guests: answers.guests,
    minutes: answers.minutes as ReportBody['minutes'],
    // A correction asks about one stage; what was said of others stays as it was.
    stages: [...reported, ...(of.corrects?.stages.slice(1) ?? [])],
    secondAdult: secondAdult ?? null,
    // A change belongs to the stage that was planned, also when it was left out.
    changes: answers.chips.map((chip) => ({ stageId, chip })),
    supersedes: of.corrects?.recordId ?? null,
  }
}

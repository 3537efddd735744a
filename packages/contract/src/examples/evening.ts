import { ids } from './ids'

const envelope = { v: 1, at: '2026-09-15T18:00:00.000Z', zone: 'Europe/London' } as const

/** What a coach's phone sends, and what comes before it. */
export const evening = {
  publication: { id: ids.publication },
  adoption: { id: ids.adoption, curriculumId: ids.curriculum, number: 1, fromDate: '2026-09-01' },
  attendance: {
    op: 'mark-attendance',
    id: ids.attendance,
    ...envelope,
    body: {
      teamId: ids.team,
      dateId: ids.date,
      marks: [
        { playerId: ids.children[0], came: true },
        { playerId: ids.children[1], came: false },
      ],
    },
  },
  report: {
    op: 'report-session',
    id: ids.report,
    ...envelope,
    body: {
      teamId: ids.team,
      dateId: ids.date,
      planId: null,
      turnout: 8,
      guests: 1,
      minutes: 75,
      stages: [{ stageId: ids.stage, pressureReached: 'poles', minutes: 20, gotOut: 'half' }],
      secondAdult: null,
      changes: [{ stageId: ids.stage, chip: 'fewer-came' }],
      supersedes: null,
    },
  },
} as const

import { ids } from './ids'

/** One progression of one stage and one model session. */
export const curriculum = {
  id: ids.curriculum,
  document: {
    v: 1,
    name: 'Out from the back',
    ageGroup: 'U10',
    formatId: 'us-7v7',
    progressions: [
      {
        progressionId: ids.progression,
        title: 'Past the first line',
        stages: [
          {
            stageId: ids.stage,
            title: 'Places and names',
            patternId: ids.pattern,
            form: { kind: 'first-steps', steps: 2 },
            pressure: 'none',
            conditions: ['Walk it once'],
          },
        ],
        after: [],
      },
    ],
    modelSessions: [
      {
        modelSessionId: ids.modelSession,
        title: 'A usual evening',
        activities: [
          {
            activityId: ids.activity,
            kind: 'pattern',
            title: 'The pattern of the week',
            minutes: 20,
            stageId: ids.stage,
            conditions: [],
            points: [],
          },
        ],
      },
    ],
  },
} as const

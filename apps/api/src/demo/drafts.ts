import type { ActivityKind, DraftDocument, ModelActivity, Pressure, Stage } from '@espalier/domain/curriculum'
import { minutes } from '@espalier/domain/quantities'
import { demoId } from './ids'
import type { TeamName } from './invented'

type StageWish = {
  readonly key: string
  readonly title: string
  readonly pattern: string
  readonly steps: number | null
  readonly pressure: Pressure
  readonly conditions: readonly string[]
}

function stage(wish: StageWish): Stage {
  return {
    stageId: demoId('stage', wish.key),
    title: wish.title,
    patternId: demoId('pattern', wish.pattern),
    form: wish.steps === null ? { kind: 'full' } : { kind: 'first-steps', steps: wish.steps },
    pressure: wish.pressure,
    conditions: wish.conditions,
  }
}

function activity(
  key: string,
  kind: ActivityKind,
  title: string,
  length: number,
  points: readonly string[],
): ModelActivity {
  return {
    activityId: demoId('activity', key),
    kind,
    title,
    minutes: minutes(length),
    stageId: null,
    conditions: [],
    points,
  }
}

const LARKS: DraftDocument = {
  v: 1,
  name: 'Out from the back, U10',
  ageGroup: 'U10',
  formatId: 'us-7v7',
  progressions: [
    {
      progressionId: demoId('progression', 'larks'),
      title: 'Past the first line',
      stages: [
        stage({
          key: 'larks-1',
          title: 'Off the wall, places and names',
          pattern: 'wall-on-the-right',
          steps: 3,
          pressure: 'none',
          conditions: ['Walk it once, then play it'],
        }),
        stage({
          key: 'larks-2',
          title: 'Off the wall, round the poles',
          pattern: 'wall-on-the-right',
          steps: null,
          pressure: 'poles',
          conditions: ['Both sides, five each before changing places'],
        }),
        stage({
          key: 'larks-3',
          title: 'Round the back against one',
          pattern: 'round-the-back',
          steps: null,
          pressure: 'x1',
          conditions: ['X may only start when the ball is rolled'],
        }),
      ],
      after: [],
    },
  ],
  modelSessions: [
    {
      modelSessionId: demoId('model', 'larks'),
      title: 'A usual evening, U10',
      activities: [
        activity('larks-game', 'small-sided-game', 'Play straight away', 15, ['Spread out when we have it']),
        activity('larks-rondo', 'rondo', 'Keep it from two', 12, ['Open your body']),
        activity('larks-pattern', 'pattern', 'The pattern of the week', 18, ['Look before it comes']),
        activity('larks-end', 'conditioned-game', 'Three small goals', 20, ['Find the empty side']),
      ],
    },
  ],
}

const SWIFTS: DraftDocument = {
  v: 1,
  name: 'Out from the back, U12',
  ageGroup: 'U12',
  formatId: 'us-9v9',
  progressions: [
    {
      progressionId: demoId('progression', 'swifts'),
      title: 'Draw one, find the other',
      stages: [
        stage({
          key: 'swifts-1',
          title: 'Carry, places and first steps',
          pattern: 'carry-until-one-comes',
          steps: 2,
          pressure: 'none',
          conditions: ['Carry at somebody, not into space'],
        }),
        stage({
          key: 'swifts-2',
          title: 'Carry at a walking defender',
          pattern: 'carry-until-one-comes',
          steps: null,
          pressure: 'shadow',
          conditions: ['The defender walks and may not tackle'],
        }),
        stage({
          key: 'swifts-3',
          title: 'Carry against two',
          pattern: 'carry-until-one-comes',
          steps: null,
          pressure: 'x2',
          conditions: ['Two X start on the edge of the area'],
        }),
      ],
      after: [],
    },
  ],
  modelSessions: [
    {
      modelSessionId: demoId('model', 'swifts'),
      title: 'A usual evening, U12',
      activities: [
        activity('swifts-rondo', 'rondo', 'Keep it from two', 15, ['Play the far foot']),
        activity('swifts-pattern', 'pattern', 'The pattern of the week', 22, ['Wait until one comes']),
        activity('swifts-buildout', 'build-out-game', 'Out against a press', 20, ['Switch counts double']),
        activity('swifts-end', 'small-sided-game', 'Play', 22, ['Same picture in the game']),
      ],
    },
  ],
}

export const DRAFTS: Readonly<Record<TeamName, DraftDocument>> = { larks: LARKS, swifts: SWIFTS }

import { instant, localDate, minutes } from '@espalier/domain/quantities'
import type { Kit, SquadMember } from '@espalier/domain/session'
import { examplePattern } from '../../drawing/pattern.fixture'
import { exampleHalf, examplePlainSpace } from '../../drawing/set-out.fixture'

// Invented: a club, a team and an evening for tests of the phone's pages.

function id(number: number): string {
  return `019a0000-0000-7000-8000-${String(number).padStart(12, '0')}`
}

const NAMES = [
  'Ada',
  'Ben',
  'Cleo',
  'Dev',
  'Ezra',
  'Fay',
  'Gus',
  'Hana',
  'Ivo',
  'June',
  'Kit',
  'Lior',
  'Max',
  'Noor',
  'Otto',
]
const HOMES = ['RCB', 'CM', 'LCB', 'RW', 'LW', 'ST', 'CM', 'LW', 'RW', 'ST'] as const

export function exampleSquad(count: number): readonly SquadMember[] {
  return NAMES.slice(0, count).map((shortName, index): SquadMember => {
    const home = HOMES[index % HOMES.length] ?? null
    const goalkeeper = index % 3 === 2 ? 'yes' : 'no'
    const past = { blocks: 0, left: 0, right: 0 }
    return {
      playerId: id(100 + index),
      shortName,
      shirt: index + 1,
      home,
      stretch: null,
      goalkeeper,
      foot: 'right',
      past,
    }
  })
}

const plain = { stageId: null, conditions: [], points: [] }

export const exampleKit: Kit = {
  v: 1,
  club: { clubId: id(1), name: 'Saltmarsh Juniors', zone: 'Europe/London', demo: true },
  team: { teamId: id(2), name: 'U10 Larks', ageGroup: 'U10', formatId: 'us-7v7', seasonId: id(3) },
  adults: [
    { memberId: id(10), displayName: 'Dana Fell' },
    { memberId: id(11), displayName: 'Pete Orme' },
  ],
  dates: [
    {
      dateId: id(20),
      startsAt: instant(Date.UTC(2026, 9, 6, 16, 30)),
      minutes: minutes(75),
      localDate: localDate('2026-10-06'),
      localStart: '17:30',
      spaceId: id(30),
      state: 'on',
      reported: false,
    },
  ],
  spaces: [
    { spaceId: id(30), space: exampleHalf },
    { spaceId: id(31), space: examplePlainSpace },
  ],
  equipment: { cone: 12, pole: 3, 'small-goal': 2, ball: 4, bib: 8 },
  squad: exampleSquad(10),
  adopted: {
    curriculumId: id(40),
    number: 3,
    contentHash: 'a'.repeat(64),
    content: {
      v: 1,
      curriculumId: id(40),
      number: 3,
      name: 'U10 building out',
      ageGroup: 'U10',
      formatId: 'us-7v7',
      progressions: [
        {
          progressionId: id(50),
          title: 'Out over the right',
          after: [],
          stages: [
            {
              stageId: id(51),
              title: 'Out over the right, one defender',
              patternId: id(60),
              form: { kind: 'full' },
              pressure: 'x1',
              conditions: ['Two touches at most'],
            },
          ],
        },
      ],
      modelSessions: [
        {
          modelSessionId: id(70),
          title: 'Out over the right',
          activities: [
            { activityId: id(71), kind: 'small-sided-game', title: 'Small-sided game', minutes: minutes(20), ...plain },
            { activityId: id(72), kind: 'pattern', title: 'Out over the right', minutes: minutes(25), ...plain },
            { activityId: id(73), kind: 'conditioned-game', title: 'Conditioned game', minutes: minutes(20), ...plain },
          ],
        },
      ],
      patterns: [{ patternId: id(60), version: 1, document: examplePattern }],
      settings: {
        v: 1,
        crossingAtRelease: 'when-released',
        penaltyMarkYards7v7: 8,
        coachesAdopt: true,
        adultsRequired: 2,
        welfareOfficer: 'Mo Carrow, 01632 960 114',
      },
      checkVersion: '1',
    },
  },
  progress: [],
}

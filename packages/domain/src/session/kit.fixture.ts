import type { ModelSession, Pressure, Progression, Stage, VersionContent } from '../curriculum'
import type { FormatId } from '../formats'
import type { PatternDocument, Position } from '../pattern'
import type { Landmark, Space, Spot } from '../pitch'
import { instant, localDate, type Millimetres, millimetres, minutes } from '../quantities'
import type { Kit, KitDate, SquadMember, Turnout } from './kit'
import type { EveningFacts } from './plan-evening'

// Invented: makers of kits, spaces and turnouts for tests of the evening.

export const PACE_MM: Millimetres = millimetres(800)

function spot(landmark: Landmark, upMm = 0, rightMm = 0): Spot {
  return { landmark, upMm: millimetres(upMm), rightMm: millimetres(rightMm) }
}

/** A 7v7 third-man pattern over the right: six steps, seven positions, poles, one opponent and two small goals. */
export function thirdMan(): PatternDocument {
  const toFeet = { kind: 'feet' } as const
  const pass = { kind: 'pass', into: toFeet, height: 'ground', touches: 2, foot: 'far' } as const
  return {
    v: 1,
    title: 'Third man on the right',
    problem: 'They press our centre back',
    formatId: 'us-7v7',
    formation: '2-3-1',
    ageGroup: 'U10',
    writtenFor: 'right',
    positions: [
      { position: 'GK', spot: spot('goal-centre', 3000) },
      { position: 'LCB', spot: spot('penalty-area-corner-left', -1000, 500) },
      { position: 'RCB', spot: spot('penalty-area-corner-right', -1000, -500) },
      { position: 'LW', spot: spot('build-out-line-left', 0, 1500) },
      { position: 'CM', spot: spot('penalty-area-top', 3000) },
      { position: 'RW', spot: spot('build-out-line-right', 0, -1500) },
      { position: 'ST', spot: spot('build-out-line-centre', 4000) },
    ],
    inPossession: [],
    onLoss: [],
    obstacles: [
      { obstacleId: 'o1', kind: 'pole', spot: spot('build-out-line-right', 1000, -6000) },
      { obstacleId: 'o2', kind: 'opponent', spot: spot('penalty-area-top', 5000, 2000) },
    ],
    targets: [
      { targetId: 't1', kind: 'small-goal', spot: spot('halfway-right', 0, -5000), widthMm: millimetres(1800) },
    ],
    restart: 'goal-kick',
    steps: [
      { stepId: 's1', action: { ...pass, from: 'GK', to: 'RCB' }, runs: [], point: 'Open your body' },
      {
        stepId: 's2',
        action: { ...pass, from: 'RCB', to: 'CM' },
        runs: [{ position: 'CM', to: spot('penalty-area-top', 4500, 2000), start: 'with-the-ball' }],
        point: 'Look over your shoulder',
      },
      {
        stepId: 's3',
        action: { kind: 'set-back', from: 'CM', to: 'RCB', into: toFeet, foot: 'near' },
        runs: [],
        point: 'Soft set',
      },
      {
        stepId: 's4',
        action: {
          ...pass,
          from: 'RCB',
          to: 'RW',
          into: { kind: 'space', spot: spot('build-out-line-right', 3000, -2500) },
        },
        runs: [{ position: 'RW', to: spot('build-out-line-right', 3000, -2500), start: 'before-the-ball' }],
        point: '',
      },
      { stepId: 's5', action: { kind: 'shot', by: 'RW', target: 't1' }, runs: [], point: '' },
    ],
    looks: [],
    teaching: {
      why: 'The player nobody marks plays forward.',
      good: 'The set comes before the presser does.',
      mistakes: [],
      question: 'Who is free?',
      easier: 'No presser',
      harder: 'One touch',
      callWords: ['Set'],
      goLong: 'When all are marked',
    },
  }
}

export function stage(stageId: string, pressure: Pressure, form: Stage['form'] = { kind: 'full' }): Stage {
  return {
    stageId,
    title: `Third man, ${stageId}`,
    patternId: 'p1',
    form,
    pressure,
    conditions: ['Two touches at most'],
  }
}

export const STAGES: readonly Stage[] = [
  stage('first-steps', 'none', { kind: 'first-steps', steps: 3 }),
  stage('poles', 'poles'),
  stage('one-defender', 'x1'),
]

export function modelSession(stageId: string | null = null): ModelSession {
  const plain = { stageId: null, conditions: [], points: [] }
  return {
    modelSessionId: 'm1',
    title: 'Build out on the right',
    activities: [
      { activityId: 'a1', kind: 'small-sided-game', title: 'Small-sided game', minutes: minutes(15), ...plain },
      { activityId: 'a2', kind: 'rondo', title: 'Rondo', minutes: minutes(12), ...plain },
      { activityId: 'a3', kind: 'pattern', title: 'Third man on the right', minutes: minutes(25), ...plain, stageId },
      { activityId: 'a4', kind: 'conditioned-game', title: 'Conditioned game', minutes: minutes(15), ...plain },
    ],
  }
}

export function versionContent(changed: Partial<VersionContent> = {}): VersionContent {
  const progression: Progression = { progressionId: 'g1', title: 'Third man', stages: STAGES, after: [] }
  return {
    v: 1,
    curriculumId: 'c1',
    number: 1,
    name: 'U10 building out',
    ageGroup: 'U10',
    formatId: 'us-7v7',
    progressions: [progression],
    modelSessions: [modelSession()],
    patterns: [{ patternId: 'p1', version: 1, document: thirdMan() }],
    settings: {
      v: 1,
      crossingAtRelease: 'when-released',
      penaltyMarkYards7v7: 8,
      coachesAdopt: true,
      adultsRequired: 2,
      welfareOfficer: '',
    },
    checkVersion: '1',
    ...changed,
  }
}

const HOMES: readonly (readonly [Position | null, Position | null])[] = [
  ['RCB', 'CM'],
  ['CM', 'ST'],
  ['LCB', 'RCB'],
  ['RW', 'ST'],
  ['LW', 'LCB'],
  ['ST', 'RW'],
  ['CM', null],
  ['LW', 'CM'],
  ['RW', 'LW'],
  [null, null],
]

/** A squad of so many, named c01, c02 …; every fifth child likes to keep goal, every third does at times. */
export function squad(count: number): readonly SquadMember[] {
  return Array.from({ length: count }, (_, index): SquadMember => {
    const [home, stretch] = HOMES[index % HOMES.length] ?? [null, null]
    return {
      playerId: `c${String(index + 1).padStart(2, '0')}`,
      shortName: `Child ${index + 1}`,
      shirt: index + 1,
      home,
      stretch,
      goalkeeper: index % 5 === 0 ? 'yes' : index % 3 === 0 ? 'sometimes' : 'no',
      foot: 'right',
      past: { blocks: 0, left: 0, right: 0 },
    }
  })
}

/** Half of a marked 7v7 pitch, wider than long, with one fixed goal. */
export function halfPitch(changed: Partial<Space> = {}): Space {
  return {
    name: 'Half of pitch 2',
    venue: 'Mill Lane',
    lengthMm: millimetres(27432),
    widthMm: millimetres(36576),
    covers: 'half',
    formatId: 'us-7v7',
    markings: {
      boundary: 'painted',
      'goal-area': 'painted',
      'penalty-area': 'painted',
      'penalty-mark': 'painted',
      'build-out-line': 'painted',
      halfway: 'painted',
      'centre-circle': 'none',
    },
    goals: [{ end: 'own', widthMm: millimetres(5486), movable: false }],
    ...changed,
  }
}

/** A rectangle of grass with nothing on it. */
export function plainSpace(lengthMetres: number, widthMetres: number, formatId: FormatId = 'us-7v7'): Space {
  return {
    name: 'Field',
    venue: 'The common',
    lengthMm: millimetres(lengthMetres * 1000),
    widthMm: millimetres(widthMetres * 1000),
    covers: 'plain',
    formatId,
    markings: {
      boundary: 'none',
      'goal-area': 'none',
      'penalty-area': 'none',
      'penalty-mark': 'none',
      'build-out-line': 'none',
      halfway: 'none',
      'centre-circle': 'none',
    },
    goals: [],
  }
}

export function kitDate(slotMinutes: number): KitDate {
  return {
    dateId: 'd1',
    startsAt: instant(1_790_000_000_000),
    minutes: minutes(slotMinutes),
    localDate: localDate('2026-10-06'),
    localStart: '17:30',
    spaceId: 's1',
    state: 'on',
    reported: false,
  }
}

export function kit(changed: Partial<Kit> = {}): Kit {
  return {
    v: 1,
    club: { clubId: 'club', name: 'Mill Lane Larks', zone: 'Europe/London', demo: true },
    team: { teamId: 't1', name: 'U10 Larks', ageGroup: 'U10', formatId: 'us-7v7', seasonId: 's1' },
    adults: [],
    dates: [kitDate(75)],
    spaces: [{ spaceId: 's1', space: halfPitch() }],
    equipment: { cone: 30, pole: 6, 'small-goal': 4, ball: 6, bib: 16 },
    squad: squad(10),
    adopted: { curriculumId: 'c1', number: 1, contentHash: '', content: versionContent() },
    progress: [],
    ...changed,
  }
}

export function turnout(here: readonly string[], changed: Partial<Turnout> = {}): Turnout {
  return { here, sitsOut: [], guests: [], adults: 1, ...changed }
}

/** An evening of so many squad children on the half pitch; every fact can be changed. */
export function evening(children: number, changed: Partial<EveningFacts> = {}): EveningFacts {
  const team = squad(Math.max(10, children))
  return {
    kit: kit({ squad: team }),
    date: kitDate(75),
    turnout: turnout(team.slice(0, children).map((member) => member.playerId)),
    space: halfPitch(),
    paceMm: PACE_MM,
    ...changed,
  }
}

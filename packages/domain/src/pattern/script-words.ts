import type { Landmark } from '../pitch'
import type { Answer, BallAction, Foot, Obstacle, RESTARTS, Run, SIGNS, Touches } from './document'

/**
 * The sentences of a script in one language. In a template {name} stands for a part, <angles> hold what goes when its part
 * is absent, and [square brackets] the same for detail that the short sentence leaves out.
 */
export type ScriptWords = {
  readonly language: string
  readonly actions: Readonly<Record<BallAction['kind'], string>>
  /** A shot where the target is a gate: nobody shoots at one. */
  readonly throughGate: string
  readonly runs: Readonly<Record<Run['start'], string>>
  readonly into: Readonly<Record<'feet' | 'space', string>>
  readonly air: string
  readonly touches: Readonly<Record<Touches, string>>
  readonly foot: Readonly<Record<Exclude<Foot, 'either'>, string>>
  readonly obstacle: Readonly<Record<Obstacle['kind'], string>>
  readonly target: Readonly<Record<'goal' | 'small-goal' | 'gate', string>>
  readonly landmarks: Readonly<Record<Landmark, string>>
  /** {landmark} with {offset}; without an offset the landmark alone. */
  readonly place: string
  readonly up: string
  readonly down: string
  readonly left: string
  readonly right: string
  readonly and: string
  readonly restarts: Readonly<Record<(typeof RESTARTS)[number], string>>
  readonly signs: Readonly<Record<(typeof SIGNS)[number], string>>
  readonly look: string
  readonly answer: string
  readonly rejoin: string
  readonly exit: string
}

export type Sign = Answer['sign']

/** Landmarks named alike on both sides and at both ends. */
const ENGLISH_LANDMARKS = {
  'goal-centre': 'the middle of the goal',
  'goal-post-left': 'the left post',
  'goal-post-right': 'the right post',
  'goal-area-corner-left': 'the left corner of the goal area',
  'goal-area-corner-right': 'the right corner of the goal area',
  'goal-area-edge-left': 'the left edge of the goal area',
  'goal-area-edge-right': 'the right edge of the goal area',
  'goal-area-top': 'the top of the goal area',
  'penalty-mark': 'the penalty mark',
  'penalty-area-corner-left': 'the left corner of the penalty area',
  'penalty-area-corner-right': 'the right corner of the penalty area',
  'penalty-area-edge-left': 'the left edge of the penalty area',
  'penalty-area-edge-right': 'the right edge of the penalty area',
  'penalty-area-top': 'the top of the penalty area',
  'penalty-arc-top': 'the top of the arc',
  'build-out-line-centre': 'the middle of the build-out line',
  'build-out-line-left': 'the build-out line on the left',
  'build-out-line-right': 'the build-out line on the right',
  'corner-left': 'the left corner',
  'corner-right': 'the right corner',
  'centre-mark': 'the centre mark',
  'halfway-left': 'the halfway line on the left',
  'halfway-right': 'the halfway line on the right',
  'far-goal-centre': 'the middle of their goal',
  'far-goal-post-left': 'the left post of their goal',
  'far-goal-post-right': 'the right post of their goal',
  'far-goal-area-corner-left': 'the left corner of their goal area',
  'far-goal-area-corner-right': 'the right corner of their goal area',
  'far-goal-area-edge-left': 'the left edge of their goal area',
  'far-goal-area-edge-right': 'the right edge of their goal area',
  'far-goal-area-top': 'the top of their goal area',
  'far-penalty-mark': 'their penalty mark',
  'far-penalty-area-corner-left': 'the left corner of their penalty area',
  'far-penalty-area-corner-right': 'the right corner of their penalty area',
  'far-penalty-area-edge-left': 'the left edge of their penalty area',
  'far-penalty-area-edge-right': 'the right edge of their penalty area',
  'far-penalty-area-top': 'the top of their penalty area',
  'far-penalty-arc-top': 'the top of their arc',
  'far-build-out-line-centre': 'the middle of their build-out line',
  'far-build-out-line-left': 'their build-out line on the left',
  'far-build-out-line-right': 'their build-out line on the right',
  'far-corner-left': 'their left corner',
  'far-corner-right': 'their right corner',
} satisfies Record<Landmark, string>

export const ENGLISH: ScriptWords = {
  language: 'en',
  actions: {
    pass: '{actor} passes< {height}> to {receiver}, {into}[, {place}], {touches}<, {foot}>.',
    'set-back': '{actor} sets it for {receiver}, {into}[, {place}], one touch<, {foot}>.',
    carry: '{actor} carries it< at {obstacle}> to {place}.',
    'dribble-past': '{actor} dribbles past {obstacle} to {place}.',
    throw: '{actor} throws to {receiver}, {into}[, {place}].',
    roll: '{actor} rolls it to {receiver}, {into}[, {place}].',
    dummy: '{actor} lets it run to {receiver}.',
    shot: '{actor} shoots at {target}.',
  },
  throughGate: '{actor} plays it through {target}.',
  runs: {
    'before-the-ball': '{runner} is already running[ to {place}] before {actor} plays.',
    'with-the-ball': '{runner} runs[ to {place}] as {actor} plays.',
    'after-the-ball': '{runner} runs[ to {place}] once the ball is there.',
  },
  into: { feet: 'to feet', space: 'into space' },
  air: 'in the air',
  touches: { 1: 'one touch', 2: 'two touches' },
  foot: { near: 'near foot', far: 'far foot' },
  obstacle: { cone: 'the cone', pole: 'the pole', opponent: 'the opponent' },
  target: { goal: 'the goal', 'small-goal': 'the small goal', gate: 'the gate' },
  landmarks: ENGLISH_LANDMARKS,
  place: '{offset} of {landmark}',
  up: '{metres} m in front',
  down: '{metres} m short',
  left: '{metres} m left',
  right: '{metres} m right',
  and: ' and ',
  restarts: {
    'goal-kick': 'Goal kick',
    'goalkeeper-hands': 'Ball in the goalkeeper’s hands',
    'free-kick': 'Free kick',
    'throw-in': 'Throw-in',
    'open-play': 'Open play',
  },
  signs: {
    'presser-from-inside': 'the presser comes from inside',
    'presser-from-outside': 'the presser comes from outside',
    'presser-comes-at': 'the presser goes to {about}',
    'presser-stays-off': 'nobody presses',
    'lane-shut': 'the way to {about} is shut',
    'two-on-one': 'it is two against one',
    'all-shut': 'everything short is shut',
  },
  look: 'Before this, {actor} looks.',
  answer: 'If {sign}:',
  rejoin: 'Then on with step {number}.',
  exit: 'That is the way out.',
}

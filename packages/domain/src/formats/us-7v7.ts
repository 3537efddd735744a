import { habit, type Millimetres, published, type Sourced } from '../quantities'
import type { BuildOutCrossing, Format, FormatChoices } from './format'
import { areaInYards, fromFeet, fromMetres, fromYards, rangeInYards } from './units'

const CHART = 'U.S. Soccer Player Development Initiatives, Small-Sided Games Chart, 2017'
const BUILD_OUT_LINE = 'U.S. Soccer Player Development Initiatives, 7v7 build-out line, 2019 text'
const MARKINGS = 'U.S. 7v7 field markings (U9–U10) as state and league rules print them, 2020'

/** The penalty mark is the club's choice: sources print more than one distance. */
export function penaltyMark7v7(choices: FormatChoices): Sourced<Millimetres> {
  return {
    value: fromYards(choices.penaltyMarkYards7v7),
    kind: 'club',
    source: 'club setting; sources of the U.S. 7v7 field disagree on the penalty mark',
  }
}

/** When opponents may cross after a release from the hands is the club's choice too. */
export function buildOutCrossing7v7(crossing: BuildOutCrossing): Sourced<BuildOutCrossing> {
  return {
    value: crossing,
    kind: 'club',
    source: 'club setting; sources disagree on when opponents may cross after a release from the hands',
  }
}

/** U.S. Soccer's game for U9 and U10, with the build-out line. */
export const us7v7: Format = {
  formatId: 'us-7v7',
  name: '7v7',
  issuer: 'U.S. Soccer',
  edition: 'Player Development Initiatives 2017, build-out line as clarified in 2019',
  ageGroups: published(['U9', 'U10'], CHART),
  playersPerSide: published(7, 'US Youth Soccer, Policy on Players and Playing Rules, Rule 303'),
  goalkeeper: published(true, 'US Youth Soccer, Policy on Players and Playing Rules, Rule 303'),
  lengthMm: published(rangeInYards(55, 65), CHART),
  widthMm: published(rangeInYards(35, 45), CHART),
  nominal: habit({ lengthMm: fromYards(60), widthMm: fromYards(40) }),
  goal: published({ widthMm: fromFeet(18.5), heightMm: fromFeet(6.5), meaning: 'maximum' }, `${CHART}, largest goal`),
  goalArea: published(areaInYards(4, 8), MARKINGS),
  penaltyArea: published(areaInYards(12, 24), MARKINGS),
  penaltyMarkMm: published(fromYards(10), `${MARKINGS}; other sources 8 yards`),
  circleRadiusMm: published(fromYards(8), MARKINGS),
  cornerArcRadiusMm: {
    value: fromMetres(1),
    kind: 'memory',
    source: 'U.S. Soccer 7v7 Standards: conforms to Law 1; not checked',
  },
  buildOutLine: published(
    'midway',
    `${BUILD_OUT_LINE}: midway between the top of the penalty area and the halfway line`,
  ),
  buildOutCrossing: published(
    'released',
    'AYSO, build-out line rules, points 1 to 5: behind the line until the goalkeeper releases the ball',
  ),
  retreatLine: published(
    'penalty-area',
    'IFAB Laws of the Game, Law 16 The Goal Kick, since 2019/20; the build-out line adds to it',
  ),
  offsideFrom: published('build-out-line', BUILD_OUT_LINE),
  restartDistanceMm: {
    value: fromYards(8),
    kind: 'memory',
    source: 'U.S. Soccer 7v7 Standards, 2016, Laws 8 and 13; not checked against the document',
  },
  punting: published(false, `${BUILD_OUT_LINE}: no punt and no drop-kick`),
  headingAllowed: published(false, 'U.S. Soccer concussion rules, 2016: no heading at U11 and younger'),
  formations: habit(['2-3-1', '3-2-1', '2-1-2-1', '3-1-2', '2-2-2']),
  doubts: [
    {
      about: 'penaltyArea',
      sentence:
        'Another state set measures 12 yards beyond each post (wider than 24 yards) and a goal area of 6 yards, on fields up to 70 by 50 yards.',
    },
    { about: 'penaltyMarkMm', sentence: 'The penalty mark is a club setting: 8 or 10 yards.' },
    {
      about: 'buildOutCrossing',
      sentence:
        'Opponents may cross once the goalkeeper releases the ball, or in some leagues once a team-mate has touched it: a club setting.',
    },
    { about: 'goal', sentence: 'The chart gives the largest goal; 6.5 by 12 feet is recommended for age and ability.' },
    { about: 'buildOutLine', sentence: 'Some leagues also use the line at defensive free kicks in the penalty area.' },
  ],
}

import { habit, published } from '../quantities'
import type { Format } from './format'
import { areaInYards, fromFeet, fromMetres, fromYards, rangeInYards } from './units'

const CHART = 'U.S. Soccer Player Development Initiatives, Small-Sided Games Chart, 2017'
const DIAGRAM = 'U.S. Soccer 9v9 Standards, 2016, Law 1 diagram; not checked against the document'

/** U.S. Soccer's game for U11 and U12. The inner markings are from memory: leagues differ. */
export const us9v9: Format = {
  formatId: 'us-9v9',
  name: '9v9',
  issuer: 'U.S. Soccer',
  edition: 'Player Development Initiatives 2017',
  ageGroups: published(['U11', 'U12'], CHART),
  playersPerSide: published(9, 'US Youth Soccer, Policy on Players and Playing Rules, Rule 303'),
  goalkeeper: published(true, 'US Youth Soccer, Policy on Players and Playing Rules, Rule 303'),
  lengthMm: published(rangeInYards(70, 80), CHART),
  widthMm: published(rangeInYards(45, 55), CHART),
  nominal: habit({ lengthMm: fromYards(75), widthMm: fromYards(50) }),
  goal: published(
    { widthMm: fromFeet(21), heightMm: fromFeet(7), meaning: 'maximum' },
    `${CHART}, largest goal; the width as U.S. club and state pages print it`,
  ),
  goalArea: { value: areaInYards(5, 16), kind: 'memory', source: DIAGRAM },
  penaltyArea: { value: areaInYards(14, 36), kind: 'memory', source: DIAGRAM },
  penaltyMarkMm: { value: fromYards(10), kind: 'memory', source: DIAGRAM },
  circleRadiusMm: { value: fromYards(8), kind: 'memory', source: DIAGRAM },
  cornerArcRadiusMm: {
    value: fromMetres(1),
    kind: 'memory',
    source: 'U.S. Soccer 9v9 Standards: conforms to Law 1; not checked',
  },
  buildOutLine: null,
  buildOutCrossing: null,
  retreatLine: published('penalty-area', 'IFAB Laws of the Game, Law 16 The Goal Kick, since 2019/20'),
  offsideFrom: published(
    'halfway',
    'U.S. Soccer Player Development Initiatives, 9v9: the ordinary offside law, no build-out line',
  ),
  restartDistanceMm: {
    value: fromYards(8),
    kind: 'memory',
    source: 'U.S. Soccer 9v9 Standards, 2016, Laws 8 and 13; not checked against the document',
  },
  punting: published(true, 'U.S. Soccer Player Development Initiatives, 9v9: punting allowed, no build-out line'),
  headingAllowed: published(
    false,
    'U.S. Soccer concussion rules, 2016: no heading at U11 and younger; at U12 allowed in matches, training limited',
  ),
  formations: habit(['3-2-3', '3-3-2', '3-1-3-1', '2-3-2-1', '3-4-1']),
  doubts: [
    {
      about: 'penaltyArea',
      sentence:
        'Leagues also paint a penalty area of 12 by 30 yards, a goal area of 4 by 14, a mark at 8 and circles of 7 yards.',
    },
    { about: 'restartDistanceMm', sentence: 'Many leagues keep opponents 10 yards away.' },
    { about: 'headingAllowed', sentence: 'U12 may head in matches; some clubs and states forbid heading through U12.' },
  ],
}

import { habit, published } from '../quantities'
import type { Format } from './format'
import { fromMetres } from './units'

const LAW_1 = 'IFAB Laws of the Game, Law 1 The Field of Play'

const goalWidth = 7.32

/** The Laws of the Game. Law 1's measures were read in the 2006/07 text and copies since; they have not changed. */
export const ifab11v11: Format = {
  formatId: 'ifab-11v11',
  name: '11v11',
  issuer: 'The IFAB',
  edition: 'Laws of the Game 2026/27 (Law 1 measures unchanged since 2006/07)',
  ageGroups: published(
    ['U13', 'U14', 'U15', 'U16', 'U17', 'U18', 'U19'],
    'US Youth Soccer, Policy on Players and Playing Rules, Rule 303; the Laws themselves name no age',
  ),
  playersPerSide: published(11, 'IFAB Laws of the Game, Law 3 The Players'),
  goalkeeper: published(true, 'IFAB Laws of the Game, Law 3 The Players'),
  lengthMm: published({ minMm: fromMetres(90), maxMm: fromMetres(120) }, `${LAW_1}, Dimensions`),
  widthMm: published({ minMm: fromMetres(45), maxMm: fromMetres(90) }, `${LAW_1}, Dimensions`),
  nominal: {
    value: { lengthMm: fromMetres(105), widthMm: fromMetres(68) },
    kind: 'memory',
    source: 'FIFA stadium guidelines, recommended field of play; not checked against the document',
  },
  goal: published({ widthMm: fromMetres(goalWidth), heightMm: fromMetres(2.44), meaning: 'exact' }, `${LAW_1}, Goals`),
  goalArea: published(
    { depthMm: fromMetres(5.5), widthMm: fromMetres(goalWidth + 2 * 5.5) },
    `${LAW_1}, The goal area: 5.5 m from the inside of each post, 5.5 m deep`,
  ),
  penaltyArea: published(
    { depthMm: fromMetres(16.5), widthMm: fromMetres(goalWidth + 2 * 16.5) },
    `${LAW_1}, The penalty area: 16.5 m from the inside of each post, 16.5 m deep`,
  ),
  penaltyMarkMm: published(fromMetres(11), `${LAW_1}, The penalty area`),
  circleRadiusMm: published(fromMetres(9.15), `${LAW_1}, Field markings; The penalty area`),
  cornerArcRadiusMm: published(fromMetres(1), `${LAW_1}, The corner area`),
  buildOutLine: null,
  buildOutCrossing: null,
  retreatLine: published('penalty-area', 'IFAB Laws of the Game, Law 16 The Goal Kick, since 2019/20'),
  offsideFrom: published('halfway', 'IFAB Laws of the Game, Law 11 Offside'),
  restartDistanceMm: published(fromMetres(9.15), 'IFAB Laws of the Game, Law 13 Free Kicks'),
  punting: { value: true, kind: 'memory', source: 'IFAB Laws of the Game, Law 12, forbids no punt; not checked' },
  headingAllowed: published(
    true,
    'U.S. Soccer concussion rules, 2016: heading allowed in matches from U12; training limited at U12 and U13',
  ),
  formations: habit(['4-3-3', '4-4-2', '4-2-3-1', '4-1-4-1', '3-5-2', '3-4-3']),
  doubts: [
    {
      about: 'headingAllowed',
      sentence:
        'At U12 and U13 heading is allowed in matches but limited in training; a ten-year-old playing up does not head.',
    },
  ],
}

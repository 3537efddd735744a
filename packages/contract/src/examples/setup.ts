import { ids } from './ids'

/** What an administrator sends to set a club up, and a director to set its limits. */
export const setup = {
  limits: {
    limits: {
      crossingAtRelease: 'when-released',
      penaltyMarkYards7v7: 8,
      profiles: { U10: { topSpeed: 5_600, passLengthMax: 13_000 } },
    },
  },
  season: { id: ids.season, name: 'Autumn', firstDay: '2026-09-01', lastDay: '2026-12-20' },
  team: {
    id: ids.team,
    seasonId: ids.season,
    name: 'U10 Wrens',
    ageGroup: 'U10',
    category: 'mixed',
    formatId: 'us-7v7',
  },
  space: {
    id: ids.space,
    space: {
      name: 'Road half',
      venue: 'Sallow Field',
      lengthMm: 27_400,
      widthMm: 36_600,
      covers: 'half',
      formatId: 'us-7v7',
      markings: {
        boundary: 'painted',
        'goal-area': 'painted',
        'penalty-area': 'painted',
        'penalty-mark': 'none',
        'build-out-line': 'flags',
        halfway: 'painted',
        'centre-circle': 'none',
      },
      goals: [{ end: 'own', widthMm: 5_640, movable: true }],
    },
  },
  slot: {
    id: ids.slot,
    spaceId: ids.space,
    weekday: 2,
    localStart: '17:30',
    minutes: 75,
    validFrom: '2026-09-01',
    validTo: '2026-12-20',
  },
  reach: { strongFootMm: 14_000, otherFootMm: 9_000, measuredOn: '2026-09-01' },
  equipment: { id: ids.store, teamId: null, counts: { cone: 40, pole: 8, 'small-goal': 4, ball: 12, bib: 20 } },
  person: { id: ids.coach, displayName: 'Rowan Coach', roles: [{ role: 'coach', teamId: ids.team }] },
  signInLink: { id: ids.link, tokenHash: 'a3'.repeat(32) },
  squadImport: {
    id: ids.squad,
    players: [
      { id: ids.children[0], shortName: 'Ash', shirt: 1, home: 'GK', stretch: 'CM', goalkeeper: 'yes', foot: 'right' },
      { id: ids.children[1], shortName: 'Bay', shirt: 2, home: 'LCB', stretch: null, goalkeeper: 'no', foot: 'left' },
      {
        id: ids.children[2],
        shortName: 'Cob',
        shirt: null,
        home: null,
        stretch: null,
        goalkeeper: 'sometimes',
        foot: 'both',
      },
    ],
  },
} as const

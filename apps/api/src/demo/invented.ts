import type { RoleName } from '@espalier/contract/sign-in'
import type { FormatId } from '@espalier/domain/formats'
import type { Space } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'

// The invented club. No club, place or person here exists.

export const CLUB_NAME = 'Quillmoor Juniors'
export const CLUB_ZONE = 'Europe/London'

export type TeamName = 'larks' | 'swifts'

export type InventedPerson = {
  readonly key: string
  readonly name: string
  readonly role: RoleName
  readonly team: TeamName | null
}

export const ADMINISTRATOR: InventedPerson = { key: 'marsh', name: 'Ottilie Marsh', role: 'administrator', team: null }

export const PEOPLE: readonly InventedPerson[] = [
  { key: 'tarrow', name: 'Bram Tarrow', role: 'director', team: null },
  { key: 'linden', name: 'Sefa Linden', role: 'coach', team: 'larks' },
  { key: 'crake', name: 'Ivo Crake', role: 'coach', team: 'swifts' },
  { key: 'hollis', name: 'Nell Hollis', role: 'assistant', team: 'larks' },
  { key: 'wray', name: 'Gwen Wray', role: 'auditor', team: null },
]

/** Both teams train on the weekday of the first start, so that whoever tries the demo has an evening to plan. */
export type InventedSlot = {
  readonly key: string
  readonly daysAfterStart: number
  readonly localStart: string
  readonly minutes: number
}

export type InventedTeam = {
  readonly key: TeamName
  readonly name: string
  readonly ageGroup: string
  readonly formatId: FormatId
  /** Short names; shirts count from 1. */
  readonly children: readonly string[]
  readonly slots: readonly InventedSlot[]
  readonly space: 'top-half' | 'lower-pitch'
}

export const TEAMS: readonly InventedTeam[] = [
  {
    key: 'larks',
    name: 'U10 Larks',
    ageGroup: 'U10',
    formatId: 'us-7v7',
    children: ['Ada', 'Bo', 'Cai', 'Dot', 'Eli', 'Fay', 'Gus', 'Hal', 'Ivy', 'Jem', 'Kit', 'Lou'],
    slots: [
      { key: 'first', daysAfterStart: 0, localStart: '17:30', minutes: 75 },
      { key: 'second', daysAfterStart: 2, localStart: '17:30', minutes: 75 },
    ],
    space: 'top-half',
  },
  {
    key: 'swifts',
    name: 'U12 Swifts',
    ageGroup: 'U12',
    formatId: 'us-9v9',
    children: [
      'Alba',
      'Bruno',
      'Clem',
      'Dara',
      'Esme',
      'Finn',
      'Gia',
      'Hugo',
      'Iona',
      'Jonas',
      'Kira',
      'Leif',
      'Maya',
      'Nils',
    ],
    slots: [{ key: 'first', daysAfterStart: 0, localStart: '18:00', minutes: 90 }],
    space: 'lower-pitch',
  },
]

const PAINTED = {
  boundary: 'painted',
  'goal-area': 'painted',
  'penalty-area': 'painted',
  'penalty-mark': 'painted',
  halfway: 'painted',
  'centre-circle': 'painted',
} as const

/** As somebody with a tape might find them: half a 7v7 pitch is wider than it is long. */
export const SPACES: Readonly<Record<InventedTeam['space'], Space>> = {
  'top-half': {
    name: 'Top pitch, road half',
    venue: 'Mill Lane',
    lengthMm: millimetres(27_400),
    widthMm: millimetres(36_600),
    covers: 'half',
    formatId: 'us-7v7',
    markings: { ...PAINTED, 'build-out-line': 'flags' },
    goals: [{ end: 'own', widthMm: millimetres(5_640), movable: true }],
  },
  'lower-pitch': {
    name: 'Lower pitch',
    venue: 'Mill Lane',
    lengthMm: millimetres(68_600),
    widthMm: millimetres(45_700),
    covers: 'whole',
    formatId: 'us-9v9',
    markings: { ...PAINTED, 'build-out-line': 'none' },
    goals: [
      { end: 'own', widthMm: millimetres(5_640), movable: false },
      { end: 'far', widthMm: millimetres(5_640), movable: false },
    ],
  },
}

export const CLUB_STORE_COUNTS = { cone: 60, pole: 12, 'small-goal': 6, ball: 24, bib: 30 }
/** What is in the Larks' bag on a usual evening: fewer cones than anybody would like. */
export const LARKS_BAG_COUNTS = { cone: 24, pole: 4, 'small-goal': 2, ball: 8, bib: 10 }

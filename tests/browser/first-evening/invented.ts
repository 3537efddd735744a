// The club of the walks: invented, and unlike the demo club in every fact that a plan is made of.

export const CLUB = 'Thornholt Weir'

export const PEOPLE = {
  administrator: 'Maud Ferrow',
  director: 'Anselm Pike',
  coach: 'Ines Calder',
  otherCoach: 'Tobin Rusk',
  assistant: 'Wilf Sorrel',
  auditor: 'Hester Lowe',
} as const

export const SPARKS = 'Sparks U9'
export const RIVER = 'River U11'

/** Ten rows are good; each bad one is bad in its own way, with the words that name it. */
export const SPARKS_CSV = [
  'name,shirt,home,stretch,goalkeeper,foot,birthday',
  'Orla,1,GK,LCB,yes,right,',
  'Pim,2,LCB,RCB,sometimes,left,',
  'Quin,3,RCB,CM,no,right,',
  'Rafe,0,CM,,no,right,',
  'Suki,4,CM,LW,no,both,',
  'Tam,5,LW,RW,sometimes,left,',
  ',6,RW,,no,right,',
  'Una,7,RW,LW,no,right,',
  'Vik,8,ST,CM,no,right,',
  'Wren,9,left back,,no,right,',
  'Pim,10,ST,,no,right,',
  'Xan,11,,,yes,right,',
  'Yara,12,ST,RW,no,left,',
  'Zeb,13,LCB,GK,sometimes,right,',
].join('\n')

export const SPARKS_SQUAD = ['Orla', 'Pim', 'Quin', 'Suki', 'Tam', 'Una', 'Vik', 'Xan', 'Yara', 'Zeb'] as const

export const SPARKS_BAD_ROWS = [
  'Line 5: the shirt must be a whole number from 1 to 99, not “0”',
  'Line 8: the name is missing',
  'Line 11: “left back” is no position like GK, LCB or CM',
  'Line 12: the name stands twice; add a letter to tell the children apart',
] as const

export const RIVER_SQUAD = [
  ...['Abel', 'Brin', 'Coz', 'Dara', 'Enid', 'Finn', 'Greta'],
  ...['Hugo', 'Isla', 'Juno', 'Koa', 'Lev', 'Mina'],
] as const

export const RIVER_CSV = ['name,shirt', ...RIVER_SQUAD.map((name, index) => `${name},${index + 1}`)].join('\n')

/** Half a pitch, wider than long, without a line or a goal: what many teams train on. */
export const BARE_HALF = { venue: 'Weir Lane', name: 'top half', length: '27', width: '38.5' } as const

/** What no format asks for, and some clubs have: shorter than any half, and wide. */
export const ODD_CORNER = { venue: 'Weir Lane', name: 'odd corner', length: '19', width: '52' } as const

/** Half a pitch with its lines and one goal. */
export const LINED_HALF = { venue: 'Mill Field', name: 'near half', length: '34', width: '45' } as const

export const THIRD_MAN = { title: 'Left, and through the middle', problem: 'Their first line stands in front of us' }
export const ROUND_RIGHT = { title: 'Round on the right', problem: 'They close the middle' }

export const SPARKS_CURRICULUM = 'Weir way, U9'
export const RIVER_CURRICULUM = 'Weir way, U11'

export const SPARKS_STAGES = [
  { title: 'Know the places', pattern: THIRD_MAN.title, form: 'the whole pattern', pressure: 'without pressure' },
  {
    title: 'Past the poles',
    pattern: THIRD_MAN.title,
    form: 'the whole pattern',
    pressure: 'against poles',
    condition: 'Two touches',
  },
  { title: 'Against one', pattern: THIRD_MAN.title, form: 'the whole pattern', pressure: 'against one X' },
] as const

export const SPARKS_SESSION = [
  { kind: 'small-sided game', title: 'Arrive and play', minutes: 15 },
  { kind: 'pattern', title: 'Tonight on the left', minutes: 25, points: 'Open before it comes' },
  { kind: 'build-out game', title: 'Out past the line', minutes: 15 },
] as const

export const RIVER_STAGES = [
  { title: 'Find the wide one', pattern: ROUND_RIGHT.title, form: 'the whole pattern', pressure: 'without pressure' },
] as const

export const RIVER_SESSION = [
  { kind: 'rondo', title: 'Warm by the mill', minutes: 20 },
  { kind: 'pattern', title: 'Tonight on the right', minutes: 30 },
  { kind: 'game with conditions', title: 'Wide goals count twice', minutes: 20 },
] as const

/** Zones round the world, so that one of them has its morning whenever the walks run. */
const ZONES = [
  'Pacific/Auckland',
  'Asia/Tokyo',
  'Asia/Kolkata',
  'Africa/Nairobi',
  'Europe/London',
  'America/Halifax',
  'America/Los_Angeles',
  'Pacific/Honolulu',
] as const

export type ClubDay = {
  readonly zone: string
  readonly today: string
  /** Monday is 1. */
  readonly weekday: number
  readonly seasonFrom: string
  readonly seasonTo: string
  readonly afterSeason: string
}

/**
 * A zone in which it is morning now, and its today. The walks' sessions began before five, so they can be reported, and
 * are not over for long, so they are still tonight's.
 */
export function clubDay(now: Date): ClubDay {
  const hourIn = (zone: string) =>
    Number(new Intl.DateTimeFormat('en-GB', { timeZone: zone, hour: '2-digit', hourCycle: 'h23' }).format(now))
  const zone = ZONES.find((each) => hourIn(each) >= 5 && hourIn(each) < 10)
  if (zone === undefined) throw new Error('some zone of the list always has its morning')
  const today = new Intl.DateTimeFormat('sv-SE', { timeZone: zone }).format(now)
  const noon = Date.parse(`${today}T12:00:00Z`)
  const dayAfter = (days: number) => new Date(noon + days * 86_400_000).toISOString().slice(0, 10)
  return {
    zone,
    today,
    weekday: new Date(noon).getUTCDay() || 7,
    seasonFrom: dayAfter(-13),
    seasonTo: dayAfter(50),
    afterSeason: dayAfter(71),
  }
}

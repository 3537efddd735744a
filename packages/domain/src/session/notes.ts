import type { EquipmentKind } from './kit'
import type { PLAN_NOTE_CODES, PlanNote } from './plan'

type Code = (typeof PLAN_NOTE_CODES)[number]

/** "1 cone", "3 cones". */
export function countOf(count: number, kind: EquipmentKind): string {
  return `${count} ${count === 1 ? EQUIPMENT_WORDS[kind].one : EQUIPMENT_WORDS[kind].many}`
}

export const EQUIPMENT_WORDS = {
  cone: { one: 'cone', many: 'cones' },
  pole: { one: 'pole', many: 'poles' },
  'small-goal': { one: 'small goal', many: 'small goals' },
  ball: { one: 'ball', many: 'balls' },
  bib: { one: 'bib', many: 'bibs' },
} as const satisfies Record<EquipmentKind, { readonly one: string; readonly many: string }>

/** "A", "A and B", "A, B and C". */
export function listInWords(words: readonly string[]): string {
  const last = words.at(-1)
  if (words.length < 2 || last === undefined) return words.join('')
  return `${words.slice(0, -1).join(', ')} and ${last}`
}

function came(count: number): string {
  return `${count} came`
}

/** Every sentence a plan can say about itself, in one place. No child is named: a plan travels to the server. */
const SENTENCES = {
  'too-few-children': (count: number) =>
    `A game needs four; ${came(count)}. Play together, small and with many touches.`,
  'too-many-children': (count: number) => `${came(count)}: more than one plan was made for. Ask for a third adult.`,
  'games-only': (title: string, players: number, goalkeeper: boolean, count: number) =>
    `${title} needs ${players}${goalkeeper ? ' and a goalkeeper' : ''}; ${came(count)}. Games only tonight.`,
  'no-version': () => 'The team follows no version yet: games only, by the habits of its age.',
  'no-model-session': () => 'The version holds no model session: the order is the habit of this age.',
  'no-stage': () => 'The version holds no stage to train: games only.',
  'stage-chosen': (title: string, days: number) =>
    days === 0 ? `${title} is new tonight.` : `${title}: practised on ${days} ${days === 1 ? 'day' : 'days'} so far.`,
  'one-side': (side: string) => `Only the ${side} side tonight: both sides need more players.`,
  'opponents-short': (wanted: number, there: number) =>
    there === 0
      ? 'No child is free to defend: walk as the defender yourself.'
      : `${wanted} defenders are written; ${there} ${there === 1 ? 'is' : 'are'} free.`,
  'positions-lack-players': (positions: readonly string[]) =>
    `${listInWords(positions)} ${positions.length === 1 ? 'lacks' : 'lack'} players by home and stretch: others stand in tonight.`,
  'goalkeeper-asked': () => 'Nobody has said yes to goal: roll the ball in yourself, or ask.',
  'rounds-short': (rounds: number) => `Only ${rounds} rounds a line-up fit; four are usual.`,
  'cut-to-space': (names: readonly string[]) =>
    names.length === 1
      ? `${listInWords(names)} lies outside this space: a gate at its edge stands for it.`
      : `${listInWords(names)} lie outside this space: gates at its edge stand for them.`,
  'small-space': (title: string, each: number, usual: number) =>
    `${title}: ${each} m² a child fits here; ${usual} is usual.`,
  'space-too-small': (title: string) => `${title} does not fit this space: play it in turns, or ask for more room.`,
  'wish-wait': (seconds: number, limit: number) =>
    `A child can wait ${seconds} seconds; at this age ${limit} is the wish.`,
  'wish-game-share': (permille: number) =>
    `Games are ${Math.floor(permille / 10)} % of the playing time; half is the wish.`,
  'wish-balls': (balls: number, wanted: number) =>
    `${balls} ${balls === 1 ? 'ball' : 'balls'}; one for five children would be ${wanted}.`,
  'wish-theme-share': (permille: number) =>
    `The theme takes ${Math.floor(permille / 10)} % of the ball time; at most 40 is the wish.`,
  'adults-short': (titles: readonly string[]) => `Left out tonight, for time and adults: ${listInWords(titles)}.`,
  'equipment-instead': (count: string, instead: string) => `${count} short: use ${instead}.`,
  'bibs-short': (count: string) => `${count} short: one team turns sleeves up or tucks shirts in.`,
  'equipment-short': (count: string) =>
    `${count} short even so: take them from the activity before at the change-over.`,
  'minutes-out-of-range': (minutes: number) => `${minutes} minutes: plans are made for 45 to 90.`,
  'sits-out': (count: number) => `${count} ${count === 1 ? 'sits' : 'sit'} out: name a job that keeps them near.`,
  'set-out-check': (checks: readonly string[]) => `Check: ${listInWords(checks)}.`,
} as const satisfies Record<Code, (...facts: never[]) => string>

/** One note with its sentence. */
export function planNote<Key extends Code>(code: Key, ...facts: Parameters<(typeof SENTENCES)[Key]>): PlanNote {
  const write = SENTENCES[code] as (...facts: unknown[]) => string
  return { code, sentence: write(...facts) }
}

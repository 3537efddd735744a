import type { ActivityKind } from '../curriculum'
import { habit } from '../quantities'
import type { AgeDefaults } from './age-defaults'
import type { Group } from './plan'

/** Places where children play at once that one adult can see: games need more eyes than rondos. */
export const GAMES_AN_ADULT = habit(2)
export const RONDOS_AN_ADULT = habit(4)
/** A rondo smaller than this is no rondo. */
const RONDO_CHILDREN_MIN = 4
const GAME_CHILDREN_MIN = 4

export type SplitGroups = {
  readonly groups: readonly Group[]
  /** "4v4", "two games, 3v3 and 3v2": what the coach reads under the title. */
  readonly detail: string
}

/**
 * Splits all children into groups, as even as they go, into as many areas as the adults can see. `turn` (the number of the
 * activity) deals the children afresh, so that they do not meet the same ones twice. An uneven number gives a plus player, who
 * plays with whoever has the ball.
 */
export function splitGroups(
  kind: Exclude<ActivityKind, 'pattern'>,
  children: readonly string[],
  adults: number,
  age: AgeDefaults,
  turn: number,
): SplitGroups {
  const dealt = dealAfresh(children, turn)
  if (kind === 'rondo') return rondos(dealt, Math.max(1, adults))
  const sizes = evenSizes(dealt.length, gameCount(dealt.length, Math.max(1, adults), age))
  const games = dealInto(dealt, sizes)
  const outnumber = kind === 'build-out-game'
  return {
    groups: games.flatMap((game, area) => teamsOf(game, area, outnumber)),
    detail: gameDetail(sizes, outnumber),
  }
}

/** Numbers found by trying: with them no two of four activities in a row have the same teams, from 5 to 24 children (see the test). */
const DEALS = [null, 3, 5, 9] as const
const DEAL_MODULUS = 31

/** The children in another order each time, so that teams, rondos and the plus player change. */
function dealAfresh(children: readonly string[], turn: number): readonly string[] {
  const deal = DEALS[turn % DEALS.length] ?? null
  if (deal === null) return children
  const keyed = children.map((child, index) => ({ child, key: ((index + 1) * (index + deal)) % DEAL_MODULUS }))
  return keyed.toSorted((a, b) => a.key - b.key).map(({ child }) => child)
}

function gameCount(children: number, adults: number, age: AgeDefaults): number {
  const wanted = Math.ceil(children / age.gamePlayersMax.value)
  return Math.max(1, Math.min(wanted, adults * GAMES_AN_ADULT.value, Math.floor(children / GAME_CHILDREN_MIN)))
}

/** Sizes that differ by one at most, larger first. */
function evenSizes(children: number, parts: number): readonly number[] {
  const small = Math.floor(children / parts)
  return Array.from({ length: parts }, (_, index) => small + (index < children % parts ? 1 : 0))
}

/** Every part takes its next child in turn, so that neighbours in the list are parted. */
function dealInto(children: readonly string[], sizes: readonly number[]): readonly (readonly string[])[] {
  return sizes.map((size, part) =>
    Array.from({ length: size }, (_, index) => children[part + index * sizes.length] ?? ''),
  )
}

function teamsOf(children: readonly string[], area: number, outnumber: boolean): readonly Group[] {
  const plain = { area, bibs: false } as const
  if (outnumber) {
    const builders = Math.ceil((children.length + 1) / 2)
    const press = children.slice(builders)
    return [
      { name: 'Build out', role: 'team', children: children.slice(0, builders), ...plain },
      ...(press.length > 0 ? [{ name: 'Press', role: 'team', children: press, area, bibs: true } as const] : []),
    ]
  }
  const half = Math.floor(children.length / 2)
  const first = children.filter((_, index) => index % 2 === 0 && index < 2 * half)
  const second = children.filter((_, index) => index % 2 === 1)
  const teams: Group[] = [
    { name: 'Without bibs', role: 'team', children: first, ...plain },
    { name: 'In bibs', role: 'team', children: second, area, bibs: true },
  ]
  const plus = children.slice(2 * half)
  if (half === 0) return [{ name: 'Plus player', role: 'plus', children: plus, ...plain }]
  return plus.length === 0 ? teams : [...teams, { name: 'Plus player', role: 'plus', children: plus, ...plain }]
}

function gameDetail(sizes: readonly number[], outnumber: boolean): string {
  const words = sizes.map((size) => {
    const half = Math.floor(size / 2)
    if (size === 1) return 'one child, with you'
    if (outnumber) return `${Math.ceil((size + 1) / 2)}v${size - Math.ceil((size + 1) / 2)}`
    return size % 2 === 0 ? `${half}v${half}` : `${half}v${half} and one plus player`
  })
  return inWords(words, 'game')
}

function rondos(children: readonly string[], adults: number): SplitGroups {
  const wanted = Math.floor(children.length / RONDO_CHILDREN_MIN)
  const sizes = evenSizes(children.length, Math.max(1, Math.min(wanted, adults * RONDOS_AN_ADULT.value)))
  const groups = dealInto(children, sizes).map((members, area): Group => {
    return { name: `Rondo ${area + 1}`, role: 'rondo', children: members, area, bibs: false }
  })
  return { groups, detail: inWords(sizes.map(rondoWord), 'rondo') }
}

/** How many stand in the middle: one up to five, two up to eight, then three. Common practice, no source. */
export function rondoDefenders(children: number): number {
  return children <= 5 ? 1 : children <= 8 ? 2 : 3
}

function rondoWord(size: number): string {
  return size < 3 ? 'passing, with you' : `${size - rondoDefenders(size)}v${rondoDefenders(size)}`
}

const COUNT_WORDS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight'] as const

function inWords(words: readonly string[], noun: string): string {
  const distinct = [...new Set(words)]
  if (words.length === 1) return distinct[0] ?? ''
  return `${COUNT_WORDS[words.length] ?? words.length} ${noun}s, ${distinct.join(' or ')}`
}

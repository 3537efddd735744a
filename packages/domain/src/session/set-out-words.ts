import { ENGLISH } from '../pattern'
import { EQUIPMENT_WORDS } from './notes'
import type { SetOutStop, WalkLeg, WalkLine } from './plan'

/** A piece of a sentence; paces are told apart so that a page can set them in bold. */
export type WalkWord = { readonly kind: 'words' | 'paces'; readonly text: string }

export type SetOutSentence = {
  readonly number: number
  /** How to get there: paces, quarter turns and landmarks only. */
  readonly walk: readonly WalkWord[]
  /** The same as plain text. */
  readonly walkText: string
  /** What to put down: "Cone", "Small goal". */
  readonly item: string
  /** What to put down instead, where equipment is short; null otherwise. */
  readonly instead: string | null
  /** What it is for, and which way a goal looks; may be empty. */
  readonly purpose: string
}

const TURNS = {
  straight: 'On',
  left: 'Quarter turn left,',
  right: 'Quarter turn right,',
  back: 'Turn round,',
} as const satisfies Record<WalkLeg['turn'], string>

const LINES = {
  'goal-line': 'the goal line',
  'left-touchline': 'the left touchline',
  'right-touchline': 'the right touchline',
  'penalty-area-top': 'the top of the penalty area',
  'build-out-line': 'the build-out line',
  halfway: 'the halfway line',
  'far-goal-line': 'their goal line',
} as const satisfies Record<WalkLine, string>

const MOUTHS = {
  up: 'mouth up the pitch',
  down: 'mouth to your own end',
  left: 'mouth to the left',
  right: 'mouth to the right',
} as const satisfies Record<NonNullable<SetOutStop['mouth']>, string>

const ITEMS = {
  cone: 'Cone',
  pole: 'Pole',
  'small-goal': 'Small goal',
  ball: 'Ball',
  bib: 'Bib',
  bag: 'Bag',
} as const satisfies Record<SetOutStop['item'], string>

/** The walk in plain English, one entry a stop, in the order of the walk. */
export function setOutSentences(stops: readonly SetOutStop[]): readonly SetOutSentence[] {
  return stops.map((stop, index) => {
    const walk = stop.item === 'bag' ? [words(bagSentence(stop))] : walkWords(stop.legs, index === 1)
    return {
      number: stop.number,
      walk,
      walkText: walk.map((word) => word.text).join(''),
      item: ITEMS[stop.item],
      instead: insteadOf(stop),
      purpose: [stop.purpose, stop.mouth === null ? '' : MOUTHS[stop.mouth]].filter((part) => part !== '').join(', '),
    }
  })
}

function bagSentence(stop: SetOutStop): string {
  return stop.from === 'bag'
    ? 'Put the bag down: that is the middle of your goal.'
    : `Put the bag down at ${ENGLISH.landmarks[stop.from]}.`
}

function insteadOf(stop: SetOutStop): string | null {
  if (stop.instead === null) return null
  return stop.item === 'small-goal' ? 'two cones instead' : `a ${EQUIPMENT_WORDS[stop.instead].one} instead`
}

function walkWords(legs: readonly WalkLeg[], isFirst: boolean): readonly WalkWord[] {
  const facing = isFirst ? [words('Face up the pitch. ')] : []
  if (legs.length === 0) return [...facing, words('Here too.')]
  return [...facing, ...legs.flatMap((leg, index) => legWords(leg, isFirst && index === 0, index === legs.length - 1))]
}

function legWords(leg: WalkLeg, afterFacing: boolean, isLast: boolean): readonly WalkWord[] {
  const turn = afterFacing && leg.turn === 'straight' ? '' : `${TURNS[leg.turn]} `
  const along = leg.along === null ? '' : ` along ${LINES[leg.along]}`
  const to = leg.to === null ? '' : `, to ${ENGLISH.landmarks[leg.to]}`
  const bib = leg.bibAfterPaces === null ? '' : `; drop a bib after ${leg.bibAfterPaces}`
  return [words(turn), paces(leg.paces), words(`${along}${to}${bib}.${isLast ? '' : ' '}`)].filter(
    (word) => word.text !== '',
  )
}

function words(text: string): WalkWord {
  return { kind: 'words', text }
}

function paces(count: number): WalkWord {
  return { kind: 'paces', text: `${count} ${count === 1 ? 'pace' : 'paces'}` }
}

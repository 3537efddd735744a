import type { Pressure, Stage } from '../curriculum'
import type { FormatChoices } from '../formats'
import type { LineupPlan } from '../lineups'
import { GOALKEEPER, type PatternDocument, type Position } from '../pattern'
import type { Side, Space } from '../pitch'
import { habit } from '../quantities'
import type { AgeDefaults } from './age-defaults'
import { AREA_SIZES, WALKING_LANE_MM } from './area-sizes'
import { isWilling, solveWithStandIns } from './child-positions'
import { edgesOf } from './fit-areas'
import { planNote } from './notes'
import { areaBetween, areaRound, type PatternPlaces, patternPlaces } from './pattern-places'
import type { Area, PlanNote } from './plan'
import { chooseField, fewestNeeded, OPPONENTS_WANTED, type StageField } from './stage-field'
import { longestWaitRounds } from './wait-rounds'
import type { Child } from './who-came'

/** A line-up stays for at least so many rounds: fewer, and a child has only just found the place. */
export const ROUNDS_A_BLOCK_MIN = habit(4)
/** More line-ups than this in one activity are more change-over than practice. */
export const BLOCKS_MAX = habit(8)
/** So few children next in are no group of their own. */
const BESIDE_CHILDREN_MIN = 3

export type PatternPractice = {
  readonly areas: readonly Area[]
  readonly lineups: LineupPlan
  readonly opponents: number
  readonly roundsABlock: number
  readonly takeTurns: number
  readonly secondsARound: number
  readonly besideArea: number | null
  readonly waitSeconds: number
  readonly detail: string
  readonly places: readonly PatternPlaces[]
  readonly notes: readonly PlanNote[]
}

export type PatternAsked = {
  readonly document: PatternDocument
  readonly stage: Stage
  readonly children: readonly Child[]
  readonly adults: number
  readonly minutes: number
  readonly space: Space
  readonly age: AgeDefaults
  readonly choices: FormatChoices | undefined
}

/** Why a stage cannot be run by those who came: "Third man needs 6 and a goalkeeper; 5 came." Null when it can. */
export function whyNotPractised(asked: FieldAsked): PlanNote | null {
  if (fieldTonight(asked).field) return null
  const needed = fewestNeeded(asked.document)
  if (asked.children.length >= needed.length) return planNote('space-too-small', asked.stage.title)
  const goalkeeper = needed.includes(GOALKEEPER)
  return planNote(
    'games-only',
    asked.stage.title,
    needed.length - (goalkeeper ? 1 : 0),
    goalkeeper,
    asked.children.length,
  )
}

/** The stage as tonight's children can run it on tonight's space, or null (see whyNotPractised). */
export function practisePattern(asked: PatternAsked): PatternPractice | null {
  const { document, stage, children, space, age } = asked
  const { field, adultInGoal, places } = fieldTonight(asked)
  if (!field) return null
  const sides = field.sides
  const tonight = places.filter((each) => sides.includes(each.side)).map((each) => each.places)
  const area = areaRound(tonight.flatMap(everyPlace), space)
  const waiting = children.length - field.positions.length - field.opponents
  const beside = asked.adults >= 2 && waiting >= BESIDE_CHILDREN_MIN ? fitBeside(area, waiting, space) : null
  const takeTurns = beside ? 1 : turnsFor(children.length, field, age)
  const secondsARound = age.secondsARound.value
  const rounds = roundsIn(asked.minutes, secondsARound)
  const blocks = blocksOf(rounds, sides, takeTurns)
  const roundsABlock = Math.max(1, Math.floor(rounds / blocks.length))
  const { lineups, lacking } = solveWithStandIns(children, field.positions, blocks)
  const cut = [...new Set(tonight.flatMap((each) => each.cut.map(({ name }) => name)))]
  return {
    areas: beside ? [area, beside] : [area],
    lineups,
    opponents: field.opponents,
    roundsABlock,
    takeTurns,
    secondsARound,
    besideArea: beside ? 1 : null,
    waitSeconds: beside
      ? 0
      : longestWaitRounds(lineups.blocks, field.opponents, roundsABlock, takeTurns) * secondsARound,
    detail: detailOf(stage.pressure, roundsABlock * blocks.length, sides, takeTurns),
    places: tonight,
    notes: [
      ...(cut.length > 0 ? [planNote('cut-to-space', cut)] : []),
      ...(sides.length === 1 ? [planNote('one-side', document.writtenFor)] : []),
      ...(adultInGoal ? [planNote('goalkeeper-asked')] : []),
      ...(lacking.length > 0 ? [planNote('positions-lack-players', lacking)] : []),
      ...opponentNotes(stage.pressure, field.opponents),
      ...(roundsABlock < ROUNDS_A_BLOCK_MIN.value ? [planNote('rounds-short', roundsABlock)] : []),
    ],
  }
}

type FieldAsked = Omit<PatternAsked, 'minutes' | 'adults' | 'age'>

function fieldTonight({ document, stage, children, space, choices }: FieldAsked) {
  const places = (['left', 'right'] as const).map((side) => ({
    side,
    places: patternPlaces(document, side, space, choices),
  }))
  const standing = new Set(places.flatMap((each) => each.places.starts.map((start) => start.position)))
  const keeperAsked = !children.some(isWilling)
  const isOnSpace = (position: Position) => standing.has(position) && !(keeperAsked && position === GOALKEEPER)
  const field = chooseField(document, stage, children.length, isOnSpace)
  return { field, places, adultInGoal: keeperAsked && standing.has(GOALKEEPER) }
}

function roundsIn(minutes: number, secondsARound: number): number {
  return Math.max(1, Math.floor((minutes * 60) / secondsARound))
}

/** Equal numbers of blocks a side, left first, then right, a whole number of turns; one turn each however short the time. */
function blocksOf(rounds: number, sides: readonly Side[], takeTurns: number): readonly Side[] {
  const most = Math.min(BLOCKS_MAX.value, Math.floor(rounds / ROUNDS_A_BLOCK_MIN.value))
  const each = Math.max(1, Math.floor(most / (sides.length * takeTurns))) * takeTurns
  return sides.flatMap((side) => Array.from({ length: each }, () => side))
}

/**
 * How many line-ups take turns, round by round. One after the other, those off wait out a whole block; where that breaks the
 * age's wish, as many line-ups as it takes to have everybody in one alternate.
 */
function turnsFor(children: number, field: StageField, age: AgeDefaults): number {
  const off = children - field.positions.length
  if (off <= field.opponents) return 1
  const roundsOff = field.opponents === 0 ? ROUNDS_A_BLOCK_MIN.value : Math.ceil(off / field.opponents) - 1
  if (roundsOff * age.secondsARound.value <= age.longestWaitSeconds.value) return 1
  const most = Math.floor(BLOCKS_MAX.value / field.sides.length)
  return Math.min(most, Math.ceil(children / field.positions.length))
}

function everyPlace(places: PatternPlaces) {
  return [
    ...places.starts,
    ...places.obstacles,
    ...places.targets,
    ...places.ways,
    ...places.cut.map((each) => each.gate),
  ]
}

/** The largest strip beside the pattern's area, cut to what those next in need; null where none is six metres wide. */
function fitBeside(area: Area, children: number, space: Space): Area | null {
  const { nearMm, farMm, leftMm, rightMm } = edgesOf(area)
  const lane = WALKING_LANE_MM.value
  const half = Math.floor(space.widthMm / 4) * 2
  const top = Math.floor(space.lengthMm / 2) * 2
  const strips = [
    { near: 0, far: top, left: -half, right: leftMm - lane },
    { near: 0, far: top, left: rightMm + lane, right: half },
    { near: farMm + lane, far: top, left: -half, right: half },
    { near: 0, far: nearMm - lane, left: -half, right: half },
  ].filter((strip) => Math.min(strip.far - strip.near, strip.right - strip.left) >= BESIDE_SIDE_MIN_MM)
  const widest = strips.reduce<(typeof strips)[number] | null>(
    (best, strip) => (best === null || sizeOf(strip) > sizeOf(best) ? strip : best),
    null,
  )
  if (!widest) return null
  const side = besideSideMm(children)
  const length = Math.min(widest.far - widest.near, side)
  const width = Math.min(widest.right - widest.left, side)
  const left = widest.left === -half ? widest.right - width : widest.left
  return areaBetween(widest.near, widest.near + length, left, left + width)
}

const BESIDE_SIDE_MIN_MM = 6000

function besideSideMm(children: number): number {
  return Math.ceil(Math.sqrt(children * AREA_SIZES.rondo.value.usual) * 2) * 500
}

function sizeOf(strip: { readonly near: number; readonly far: number; readonly left: number; readonly right: number }) {
  return (strip.far - strip.near) * (strip.right - strip.left)
}

function opponentNotes(pressure: Pressure, there: number): readonly PlanNote[] {
  const wanted = OPPONENTS_WANTED[pressure]
  return there < wanted ? [planNote('opponents-short', wanted, there)] : []
}

const PRESSURE_WORDS = {
  none: 'no defenders',
  poles: 'poles to pass',
  shadow: 'a defender who walks',
  x1: 'one defender',
  x2: 'two defenders',
  x3: 'three defenders',
  x4: 'four defenders',
  x5: 'five defenders',
  x6: 'six defenders',
} as const satisfies Record<Pressure, string>

function detailOf(pressure: Pressure, rounds: number, sides: readonly Side[], takeTurns: number): string {
  const where = sides.length === 2 ? 'both sides' : `${sides[0]} side`
  const turns = takeTurns === 1 ? '' : `, ${takeTurns} line-ups take turns`
  return `${PRESSURE_WORDS[pressure]}, ${rounds} rounds, ${where}${turns}`
}

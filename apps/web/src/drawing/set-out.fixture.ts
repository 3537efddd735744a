import { nominalSpace, type Space } from '@espalier/domain/pitch'
import { millimetres } from '@espalier/domain/quantities'
import type { Area, SetOutStop, WalkLeg } from '@espalier/domain/session'

/** An invented half pitch with painted lines and one goal. */
export const exampleHalf: Space = {
  ...nominalSpace('us-7v7'),
  name: 'Half of pitch 2',
  lengthMm: millimetres(27_430),
  covers: 'half',
  goals: [{ end: 'own', widthMm: millimetres(5_490), movable: false }],
}

/** An invented rectangle without lines, wider than long. */
export const examplePlainSpace: Space = {
  ...exampleHalf,
  name: 'The lower field',
  lengthMm: millimetres(24_000),
  widthMm: millimetres(34_000),
  covers: 'plain',
  goals: [],
  markings: {
    boundary: 'none',
    'goal-area': 'none',
    'penalty-area': 'none',
    'penalty-mark': 'none',
    'build-out-line': 'none',
    halfway: 'none',
    'centre-circle': 'none',
  },
}

const leg = (turn: WalkLeg['turn'], paces: number, upMm: number, rightMm: number): WalkLeg => ({
  turn,
  upMm: millimetres(upMm),
  rightMm: millimetres(rightMm),
  paces,
  lengthMm: millimetres(paces * 800),
  to: null,
  along: null,
  bibAfterPaces: null,
})

const stop = (
  number: number,
  item: SetOutStop['item'],
  upMm: number,
  rightMm: number,
  legs: readonly WalkLeg[],
): SetOutStop => ({
  number,
  item,
  instead: null,
  upMm: millimetres(upMm),
  rightMm: millimetres(rightMm),
  from: 'bag',
  legs,
  purpose: '',
  mouth: item === 'small-goal' ? 'down' : null,
  activityIds: [],
})

/** A short walk from the middle of the own goal: two cones, a pole and a small goal. */
export const exampleStops: readonly SetOutStop[] = [
  stop(0, 'bag', 0, 0, []),
  stop(1, 'cone', 9_600, 0, [leg('straight', 12, 9_600, 0)]),
  stop(2, 'cone', 9_600, 8_000, [leg('right', 10, 9_600, 8_000)]),
  stop(3, 'pole', 18_400, 8_000, [leg('left', 11, 18_400, 8_000)]),
  stop(4, 'small-goal', 22_400, -4_000, [leg('straight', 5, 22_400, 8_000), leg('left', 15, 22_400, -4_000)]),
]

export const exampleAreas: readonly Area[] = [
  {
    upMm: millimetres(12_000),
    rightMm: millimetres(-9_000),
    lengthMm: millimetres(9_000),
    widthMm: millimetres(9_500),
  },
  {
    upMm: millimetres(12_000),
    rightMm: millimetres(8_000),
    lengthMm: millimetres(14_000),
    widthMm: millimetres(12_000),
  },
]

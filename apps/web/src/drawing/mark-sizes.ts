import type { Rectangle } from '@espalier/domain/geometry'

/** Where a drawing is read: at a desk, on a phone in sunlight, or on paper. */
export type Medium = 'desk' | 'phone' | 'paper'

/** Sizes of marks in metres of the pitch, chosen by eye for each medium (our own choice, no source). */
export type MarkSizes = {
  /** What strokes, dashes and gaps are multiplied with: more than 1 on large pitches. */
  readonly unit: number
  readonly ringRadius: number
  readonly ringOutline: number
  readonly ringOutlineActing: number
  readonly positionText: number
  readonly crossArm: number
  readonly crossStroke: number
  readonly ballRadius: number
  readonly ballEdge: number
  readonly poleWidth: number
  readonly poleLength: number
  readonly coneWidth: number
  readonly coneHeight: number
  readonly coneOutline: number
  readonly head: number
  readonly number: number
  readonly numberActing: number
  readonly label: number
  readonly tag: number
}

const DESK: MarkSizes = {
  unit: 1,
  ringRadius: 1.35,
  ringOutline: 0.2,
  ringOutlineActing: 0.34,
  positionText: 1.02,
  crossArm: 0.97,
  crossStroke: 0.3,
  ballRadius: 0.48,
  ballEdge: 0.12,
  poleWidth: 0.52,
  poleLength: 1.9,
  coneWidth: 1.7,
  coneHeight: 1.55,
  coneOutline: 0.18,
  head: 1.15,
  number: 1.25,
  numberActing: 1.6,
  label: 1.1,
  tag: 1.9,
}

const MARK_SIZES = {
  desk: DESK,
  phone: {
    ...DESK,
    ringRadius: 1.85,
    positionText: 1.38,
    crossArm: 1.26,
    ballRadius: 0.5,
    coneWidth: 1.96,
    coneHeight: 1.78,
    head: 1.35,
    number: 1.6,
    numberActing: 1.98,
    label: 1.5,
    tag: 2.5,
  },
  paper: {
    ...DESK,
    ringRadius: 1.5,
    positionText: 1.12,
    crossArm: 1.02,
    ballRadius: 0.5,
    coneWidth: 1.75,
    coneHeight: 1.6,
    number: 1.4,
    numberActing: 1.4,
    label: 1.2,
    tag: 2.1,
  },
} as const satisfies Record<Medium, MarkSizes>

/** The pitch the sizes above were chosen on: 60 × 40 yards. */
const CHOSEN_ON = { length: 54.86, width: 36.58 } as const
const LARGEST_UNIT = 2

/** The sizes for a part of a pitch: on a larger one all marks grow alike, so that they stay readable on the same page. */
export function markSizes(medium: Medium, shown: Rectangle): MarkSizes {
  const grown = Math.max(1, (shown.far - shown.near) / CHOSEN_ON.length, (shown.right - shown.left) / CHOSEN_ON.width)
  const factor = Math.min(LARGEST_UNIT, grown)
  const sizes: MarkSizes = MARK_SIZES[medium]
  return Object.fromEntries(Object.entries(sizes).map(([name, size]) => [name, size * factor])) as MarkSizes
}

/** The sizes of samples in a legend. */
export const SAMPLE_SIZES: MarkSizes = DESK

/** How paths keep clear of the rings they leave and reach, in metres from the ring's edge. */
export const LEAVING_GAP = 0.3
export const REACHING_GAP = 0.35

/** Widths of what is read now and of what is not, in metres. */
export const STROKES = {
  ball: { now: 0.26, past: 0.15 },
  run: { now: 0.22, past: 0.14 },
  past: { head: 0.72, wave: 0.34 / 0.42 },
  wash: 1.25,
  halo: 0.55,
} as const

/** Three letters need a smaller size to stay inside the ring. */
export function positionTextSize(sizes: MarkSizes, position: string): number {
  return position.length > 2 ? sizes.positionText * 0.82 : sizes.positionText
}

import type { Millimetres, Sourced } from '../quantities'

/** The closed list of formats this edition knows; a club's own and other bodies' formats join it with their issue. */
export const FORMAT_IDS = ['ifab-11v11', 'us-9v9', 'us-7v7'] as const
export type FormatId = (typeof FORMAT_IDS)[number]

export type Range = { readonly minMm: Millimetres; readonly maxMm: Millimetres }

/** The marked areas of one end, measured as the laws do: depth up the pitch, width across it. */
export type MarkedArea = { readonly depthMm: Millimetres; readonly widthMm: Millimetres }

/** What a governing body prescribes for one game, every number with its source. */
export type Format = {
  readonly formatId: FormatId
  readonly name: string
  readonly issuer: string
  readonly edition: string
  readonly playersPerSide: Sourced<number>
  readonly lengthMm: Sourced<Range>
  readonly widthMm: Sourced<Range>
  /** The size drawn when no space is chosen: inside the range, by habit or by the body's recommendation. */
  readonly nominal: Sourced<{ readonly lengthMm: Millimetres; readonly widthMm: Millimetres }>
  readonly goal: Sourced<{ readonly widthMm: Millimetres; readonly heightMm: Millimetres }>
  readonly goalArea: Sourced<MarkedArea>
  readonly penaltyArea: Sourced<MarkedArea>
  readonly penaltyMarkMm: Sourced<Millimetres>
  /** Radius of the centre circle and of the arc round the penalty mark. */
  readonly circleRadiusMm: Sourced<Millimetres>
  /** Present where the format plays with a build-out line midway between penalty area and halfway line. */
  readonly buildOutLine: Sourced<'midway'> | null
  readonly offsideFrom: Sourced<'halfway' | 'build-out-line'>
  readonly headingAllowed: Sourced<boolean>
  readonly ageGroups: Sourced<readonly string[]>
  readonly formations: Sourced<readonly string[]>
}

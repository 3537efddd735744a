import { assert } from './assert'
import type { Brand } from './brand'

/** Lengths inside geometry and kinematics. Documents and tables store whole millimetres instead. */
export type Metres = Brand<number, 'Metres'>
/** Whole millimetres: what is stored and what discrete choices are made on. */
export type Millimetres = Brand<number, 'Millimetres'>

export function metres(value: number): Metres {
  assert(Number.isFinite(value), 'a length in metres must be finite')
  return value as Metres
}

export function millimetres(value: number): Millimetres {
  assert(Number.isSafeInteger(value), 'a length in millimetres must be a whole number')
  return value as Millimetres
}

export function metresOf(length: Millimetres): Metres {
  return (length / 1000) as Metres
}

/** Rounds to the nearest whole millimetre, halves away from zero, so that mirrored lengths stay mirrored. */
export function millimetresOf(length: Metres): Millimetres {
  const rounded = Math.sign(length) * Math.round(Math.abs(length) * 1000)
  return (rounded === 0 ? 0 : rounded) as Millimetres
}

/** One international yard is exactly 0.9144 m. Source: international yard and pound agreement, 1959. */
export function metresFromYards(yards: number): Metres {
  return metres(yards * 0.9144)
}

import { assert, type Millimetres, millimetres } from '../quantities'

/** Whole paces, and what is left over; together they are the length. */
export type Paces = { readonly paces: number; readonly remainderMm: Millimetres }

/** A length in a coach's own paces. */
export function paces(length: Millimetres, paceMm: Millimetres): Paces {
  assert(length >= 0, 'a length to walk must not be negative')
  assert(paceMm > 0, 'a pace must have a length')
  const whole = Math.floor(length / paceMm)
  return { paces: whole, remainderMm: millimetres(length - whole * paceMm) }
}

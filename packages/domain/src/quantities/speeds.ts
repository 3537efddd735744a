import { assert } from './assert'
import type { Brand } from './brand'

export type MetresPerSecond = Brand<number, 'MetresPerSecond'>
export type MetresPerSecondSquared = Brand<number, 'MetresPerSecondSquared'>

export function metresPerSecond(value: number): MetresPerSecond {
  assert(Number.isFinite(value), 'a speed must be finite')
  return value as MetresPerSecond
}

export function metresPerSecondSquared(value: number): MetresPerSecondSquared {
  assert(Number.isFinite(value), 'an acceleration must be finite')
  return value as MetresPerSecondSquared
}

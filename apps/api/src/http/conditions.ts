import { entityTag } from '@espalier/contract/commands'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { Refusal } from './problem-error'

export type Versioned = { readonly version: number; readonly document: unknown }

/** A write to something shared says which version it was made from; a stale one gets the version that stands now. */
export function checkVersion(ifMatch: string | undefined, current: Versioned): Result<true, Refusal> {
  if (ifMatch === undefined) return refuse({ code: 'condition-required' })
  if (ifMatch === entityTag(current.version)) return ok(true)
  return refuse({ code: 'version-is-stale', current: { version: current.version, document: current.document } })
}

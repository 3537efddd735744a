import { compareIds } from '../quantities'
import type { Kit, SquadMember, Turnout } from './kit'

export const GUEST_PREFIX = 'guest:'

/** A child of this evening; a guest has initials only, and no history. */
export type Child = Pick<SquadMember, 'playerId' | 'home' | 'stretch' | 'goalkeeper' | 'foot' | 'past'>

export type WhoCame = {
  /** Everybody who plays, in id order. */
  readonly children: readonly Child[]
  /** Came but sits out, in id order. */
  readonly sitsOut: readonly string[]
}

/**
 * Who plays tonight, whatever order or spelling the ticks came in. A child ticked twice plays once; whoever sits out plays in
 * no group; two guests with the same initials are told apart by a number.
 */
export function whoCame(kit: Kit, turnout: Turnout): WhoCame {
  const guests = guestIds(turnout.guests)
  const sitsOut = unique([...turnout.sitsOut]).sort(compareIds)
  const out = new Set(sitsOut)
  const squad = new Map(kit.squad.map((member) => [member.playerId, member]))
  const playing = unique([...turnout.here, ...guests])
    .filter((id) => !out.has(id))
    .sort(compareIds)
  return { children: playing.map((id) => squad.get(id) ?? unknownChild(id)), sitsOut }
}

/** Ids of guests by their initials: guest:AB, and guest:AB-2 for a second AB. */
export function guestIds(initials: readonly string[]): readonly string[] {
  const seen = new Map<string, number>()
  return [...initials].sort(compareIds).map((raw) => {
    const name = initialsOf(raw)
    const count = (seen.get(name) ?? 0) + 1
    seen.set(name, count)
    return count === 1 ? `${GUEST_PREFIX}${name}` : `${GUEST_PREFIX}${name}-${count}`
  })
}

/** Up to eight signs without spaces; somebody without initials is "?", so that an empty box is still a child. */
function initialsOf(raw: string): string {
  const written = raw.startsWith(GUEST_PREFIX) ? raw.slice(GUEST_PREFIX.length) : raw
  return [...written.replace(/\s/gu, '')].slice(0, 8).join('') || '?'
}

/** Guests, and children whose names are already erased, play without history; nobody is sent in goal unasked. */
function unknownChild(playerId: string): Child {
  return { playerId, home: null, stretch: null, goalkeeper: 'no', foot: 'both', past: { blocks: 0, left: 0, right: 0 } }
}

function unique(ids: readonly string[]): string[] {
  return [...new Set(ids)]
}

import type pg from 'pg'
import { findLogins, type Login } from './logins'

type Waiting = {
  readonly tokenHash: Buffer
  readonly resolve: (login: Login | null) => void
  readonly reject: (error: unknown) => void
}

/** Asks whose login a token is, at the moment of asking: an answer is never kept for a later request. */
export type LoginLookup = (tokenHash: Buffer) => Promise<Login | null>

/**
 * Looks logins up together when many requests come at once: whoever asks while a statement is in flight waits for the next
 * one, which asks for all of them. Each look-up starts after its request came, so a revoked login is never found.
 */
export function makeLoginLookup(identity: pg.Pool, now: () => number): LoginLookup {
  let waiting: Waiting[] = []
  let isAsking = false

  async function askForAll(): Promise<void> {
    const asked = waiting
    waiting = []
    isAsking = true
    try {
      const logins = await findLogins(
        identity,
        asked.map(({ tokenHash }) => tokenHash),
        now(),
      )
      for (const { tokenHash, resolve } of asked) resolve(logins.get(tokenHash.toString('hex')) ?? null)
    } catch (error) {
      for (const { reject } of asked) reject(error)
    } finally {
      isAsking = false
      if (waiting.length > 0) void askForAll()
    }
  }

  return (tokenHash) =>
    new Promise((resolve, reject) => {
      waiting.push({ tokenHash, resolve, reject })
      if (!isAsking) void askForAll()
    })
}

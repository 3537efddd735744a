import type { Browser } from '@playwright/test'
import { signIn, type Visitor, visit } from '../visitor'
import { clubDay, type PEOPLE } from './invented'

// What the walks of one evening hand on to each other; they run in one process, one after the other.

export type Role = keyof typeof PEOPLE

export const day = clubDay(new Date())
export const links = new Map<Role, string>()
export const visitors = new Map<Role | 'demo' | 'stranger', Visitor>()

/** What the planner made for this club. */
export const own: { evening: readonly string[]; setOut: readonly string[] } = { evening: [], setOut: [] }

/** Somebody opens the link that the administrator has passed on to them. */
export async function arrive(browser: Browser, role: Role, size?: Parameters<typeof visit>[1]): Promise<Visitor> {
  const visitor = await visit(browser, size)
  visitors.set(role, visitor)
  await signIn(visitor, links.get(role) ?? '')
  return visitor
}

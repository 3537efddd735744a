import { signInBody } from '@espalier/contract/sign-in'
import * as z from 'zod/mini'

export type SignInLink = { readonly clubId: string; readonly token: string }

/** What a link's fragment says: `#<clubId>.<token>`; null where it says anything else. */
export function signInLinkFrom(fragment: string): SignInLink | null {
  const [clubId, token, ...rest] = fragment.replace(/^#/, '').split('.')
  if (rest.length > 0) return null
  const parsed = z.safeParse(signInBody, { clubId, token })
  return parsed.success ? parsed.data : null
}

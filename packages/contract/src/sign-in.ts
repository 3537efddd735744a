import * as z from 'zod/mini'
import { line, secret, sha256Hex, uuid } from './quantities'

export const ROLES = ['administrator', 'director', 'coach', 'assistant', 'auditor'] as const
export const roleName = z.enum(ROLES)
export type RoleName = z.infer<typeof roleName>

/** A role in the club, or of one team for coaches and assistants. */
export const memberRole = z.strictObject({ role: roleName, teamId: z.nullable(uuid) })

/** The press on the sign-in page: uses the link up and sets the login cookie. */
export const signInBody = z.strictObject({ clubId: uuid, token: secret })
export const signInResult = z.strictObject({ clubId: uuid })

/** The administrator's browser makes the secret and sends only its hash, so no stored reply ever holds one. */
export const signInLinkBody = z.strictObject({ id: uuid, tokenHash: sha256Hex })

export type SignInLinkBody = z.infer<typeof signInLinkBody>

export const me = z.strictObject({
  accountId: uuid,
  clubs: z.array(
    z.strictObject({
      clubId: uuid,
      name: line(80),
      demo: z.boolean(),
      memberId: uuid,
      displayName: line(60),
      roles: z.array(z.strictObject({ role: roleName, teamId: z.nullable(uuid), teamName: z.nullable(line(60)) })),
    }),
  ),
})
export type Me = z.infer<typeof me>

import * as z from 'zod/mini'
import { line, uuid } from './quantities'
import { memberRole } from './sign-in'

export const personBody = z.strictObject({
  id: uuid,
  displayName: line(60),
  roles: z.array(memberRole).check(z.minLength(1), z.maxLength(20)),
})

export const personEdit = z.strictObject({
  displayName: line(60),
  roles: z.array(memberRole).check(z.maxLength(20)),
  /** True ends the membership; the record book keeps what was done. */
  left: z.boolean(),
})

export type PersonEdit = z.infer<typeof personEdit>

export const person = z.strictObject({
  memberId: uuid,
  displayName: line(60),
  roles: z.array(memberRole),
  version: z.int(),
  left: z.boolean(),
  /** Whether a link was made and whether one was ever used; null for whoever may not make links. */
  signIn: z.nullable(z.enum(['no-link', 'link-waiting', 'has-signed-in'])),
})
export const people = z.strictObject({ people: z.array(person) })
export type Person = z.infer<typeof person>
export type PersonBody = z.infer<typeof personBody>
export const personParams = z.strictObject({ clubId: uuid, memberId: uuid })

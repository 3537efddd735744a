import { paths } from '@espalier/contract/paths'
import { me, signInBody, signInResult } from '@espalier/contract/sign-in'
import * as z from 'zod/mini'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { loginOf } from '../../http/guards'
import { clearLoginCookie, hashToken, readLoginToken, setLoginCookie } from '../../http/login-cookie'
import { LOGIN_MAX_MILLISECONDS, revokeLogin } from '../../http/logins'
import { unwrap } from '../../http/problem-error'
import { findMe } from './find-me'
import { signIn } from './sign-in'

export function registerLogins(app: Api, deps: Deps): void {
  app.post(
    paths.logins,
    { schema: { body: signInBody, response: responses({ 201: signInResult }) }, config: { access: { kind: 'open' } } },
    async (request, reply) => {
      const { token, clubId } = unwrap(await signIn(deps, request.body))
      // Whoever used this browser before is signed out of it, and not only out of its cookie.
      const earlier = readLoginToken(request.headers.cookie)
      if (earlier !== null) await revokeLogin(deps.pools.identity, hashToken(earlier), deps.now())
      return reply
        .code(201)
        .header('set-cookie', setLoginCookie(token, LOGIN_MAX_MILLISECONDS / 1000))
        .send({ clubId })
    },
  )
  app.delete(
    paths.currentLogin,
    {
      schema: { body: z.optional(z.strictObject({})), response: responses({ 204: z.null() }) },
      config: { access: { kind: 'login' } },
    },
    async (request, reply) => {
      await revokeLogin(deps.pools.identity, loginOf(request).tokenHash, deps.now())
      return reply.code(204).header('set-cookie', clearLoginCookie()).send(null)
    },
  )
  app.get(
    paths.me,
    { schema: { response: responses({ 200: me }) }, config: { access: { kind: 'login' } } },
    async (request) => findMe(deps, loginOf(request)),
  )
}

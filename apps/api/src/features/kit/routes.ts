import { teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { kit } from '@espalier/contract/sessions'
import * as z from 'zod/mini'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendJsonText } from '../../http/send-json-text'
import { findKit } from './find-kit'

export function registerKit(app: Api, deps: Deps): void {
  app.get(
    paths.kit,
    {
      schema: { params: teamParams, response: responses({ 200: kit, 304: z.null() }) },
      config: memberRoute('kit.read'),
    },
    async (request, reply) => {
      const found = unwrap(await findKit(deps, loginOf(request), request.params))
      // Kept by the page itself, sealed; no cache of a browser or proxy may hold it.
      reply.header('etag', found.tag)
      if (request.headers['if-none-match'] === found.tag) return reply.code(304).send(null)
      return sendJsonText(reply, found.text)
    },
  )
}

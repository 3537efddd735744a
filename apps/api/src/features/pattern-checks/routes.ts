import { paths } from '@espalier/contract/paths'
import { patternCheck, patternCheckBody } from '@espalier/contract/pattern-checks'
import type { Deps } from '../../deps'
import { type Api, responses } from '../../http/api'
import { hangUpSignal } from '../../http/hang-up'
import { unwrap } from '../../http/problem-error'
import { sendJsonText } from '../../http/send-json-text'
import { checkDocument } from './check-document'

/** No command: it keeps nothing, so it needs no key and leaves no entry. Whoever is signed in may ask. */
export function registerPatternChecks(app: Api, deps: Deps): void {
  app.post(
    paths.patternChecks,
    {
      schema: { body: patternCheckBody, response: responses({ 200: patternCheck }) },
      config: { access: { kind: 'login' }, alsoCounted: 'checks' },
    },
    async (request, reply) => {
      const report = unwrap(await checkDocument(deps, request.body, hangUpSignal(reply)))
      if (report !== null) return sendJsonText(reply, report)
      reply.hijack()
      return undefined as never
    },
  )
}

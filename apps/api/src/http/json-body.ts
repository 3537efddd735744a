import type { FastifyInstance } from 'fastify'
import { parseJsonText } from './json-text'

/** Bodies are JSON read by our own parser, and no other type has one. An empty body is no body. */
export function readJsonBodies(app: FastifyInstance): void {
  app.removeAllContentTypeParsers()
  app.addContentTypeParser(
    'application/json',
    { parseAs: 'string' },
    async (_request: unknown, text: string | Buffer) =>
      text.length === 0 ? undefined : parseJsonText(text.toString()),
  )
}

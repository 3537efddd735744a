import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import { commandHeaders, commandResult, editHeaders } from '@espalier/contract/commands'
import { problem } from '@espalier/contract/problems'
import type { FastifyBaseLogger, FastifyInstance } from 'fastify'
import type { ZodTypeProvider } from 'fastify-type-provider-zod'

/** The server as features see it: parameters, bodies and answers are typed by the contract's shapes. */
export type Api = FastifyInstance<Server, IncomingMessage, ServerResponse, FastifyBaseLogger, ZodTypeProvider>

const refused = {
  description: 'A problem (RFC 9457); its code says which.',
  content: { 'application/problem+json': { schema: problem } },
} as const

/** Every route answers its own shape or a problem; nothing else leaves. */
export function responses<Shapes extends Readonly<Record<number, unknown>>>(shapes: Shapes) {
  return { ...shapes, '4xx': refused, '5xx': refused } as const
}

const done = responses({ 200: commandResult, 201: commandResult })

/** What a command takes and answers. */
export function commandSchema<Params, Body>(params: Params, body: Body) {
  return { params, headers: commandHeaders, body, response: done } as const
}

/** The same for an edit, which says by If-Match which version it was made from. */
export function editSchema<Params, Body>(params: Params, body: Body) {
  return { params, headers: editHeaders, body, response: done } as const
}

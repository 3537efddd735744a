import { commandResult } from '@espalier/contract/commands'
import { draftDocument, versionContent } from '@espalier/contract/curricula'
import document from '@espalier/contract/openapi.json'
import { paths } from '@espalier/contract/paths'
import { patternDocument } from '@espalier/contract/patterns'
import { space } from '@espalier/contract/places'
import { sessionPlan } from '@espalier/contract/plans'
import { problem } from '@espalier/contract/problems'
import { recordRow } from '@espalier/contract/records'
import swagger from '@fastify/swagger'
import { createJsonSchemaTransform, createJsonSchemaTransformObject } from 'fastify-type-provider-zod'
import * as z from 'zod/mini'
import { type Api, responses } from './api'
import { LOGIN_COOKIE } from './login-cookie'
import { sendJsonText } from './send-json-text'

const text = JSON.stringify(document)

/** Serves the contract as it was generated and committed; a test holds it to the routes. */
export function registerOpenApi(app: Api): void {
  app.get(
    paths.openapi,
    {
      schema: { response: responses({ 200: z.looseObject({ openapi: z.string() }) }) },
      config: { access: { kind: 'open' } },
    },
    async (_request, reply) => sendJsonText(reply, text),
  )
}

/** Shapes that stand in many places get a name and stand once. */
const NAMED = {
  Problem: problem,
  CommandResult: commandResult,
  PatternDocument: patternDocument,
  DraftDocument: draftDocument,
  VersionContent: versionContent,
  Space: space,
  SessionPlan: sessionPlan,
  SessionRecord: recordRow,
} as const

/** Makes the contract as OpenAPI 3.1 from the shapes that check every request and answer. Before the routes. */
export async function describeRoutes(app: Api): Promise<void> {
  const schemaRegistry = z.registry<{ id?: string }>()
  for (const [id, shape] of Object.entries(NAMED)) schemaRegistry.add(shape, { id })
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Espalier',
        version: '1',
        description: 'A club’s way of playing: written, published, pulled for tonight, and proved.',
      },
      components: { securitySchemes: { login: { type: 'apiKey', in: 'cookie', name: LOGIN_COOKIE } } },
      security: [{ login: [] }],
    },
    transform: createJsonSchemaTransform({ schemaRegistry }),
    transformObject: createJsonSchemaTransformObject({ schemaRegistry }),
  })
}

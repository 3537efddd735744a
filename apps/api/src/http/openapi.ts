import { paths } from '@espalier/contract/paths'
import swagger from '@fastify/swagger'
import { jsonSchemaTransform } from 'fastify-type-provider-zod'
import * as z from 'zod/mini'
import { type Api, responses } from './api'
import { LOGIN_COOKIE } from './login-cookie'

/** The contract as OpenAPI 3.1, made from the same shapes that check every request and answer. */
export async function registerOpenApi(app: Api): Promise<void> {
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
    transform: jsonSchemaTransform,
  })
  app.get(
    paths.openapi,
    {
      schema: { response: responses({ 200: z.looseObject({ openapi: z.string() }) }) },
      config: { access: { kind: 'open' } },
    },
    async () => app.swagger() as unknown as { openapi: string },
  )
}

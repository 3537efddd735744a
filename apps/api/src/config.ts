import { availableParallelism } from 'node:os'
import { z } from 'zod'
import type { RolePasswords } from './db/roles'

// Each variable stands here once, with its meaning; nothing else in the API reads the environment.

const databaseUrl = z.string().regex(/^postgres(ql)?:\/\/\S+$/, 'must be a postgresql:// address')
const count = (fallback: number, most: number) => z.coerce.number().int().min(1).max(most).default(fallback)

/** An origin and nothing more: no path, no slash at the end. */
const origin = z
  .string()
  .refine(
    (text) => URL.canParse(text) && new URL(text).origin === text,
    'must be an origin such as http://127.0.0.1:4173',
  )

/** 32 random bytes in base64url; wraps the key of each child's name and is never in the database. */
const nameKey = z
  .string()
  .refine((text) => /^[A-Za-z0-9_-]{43}$/.test(text), 'must be 32 bytes in base64url (43 characters)')

const databaseVariables = z.object({
  /** The database as espalier_app, which sees one club at a time. */
  ESPALIER_APP_DATABASE_URL: databaseUrl,
  /** The same database as espalier_identity, which sees sign-in and no club. */
  ESPALIER_IDENTITY_DATABASE_URL: databaseUrl,
  ESPALIER_APP_CONNECTIONS: count(10, 100),
  ESPALIER_IDENTITY_CONNECTIONS: count(4, 100),
  ESPALIER_KEK: nameKey,
  /** What people type into the address bar; sign-in links begin with it. */
  ESPALIER_ORIGIN: origin,
})

const serverVariables = databaseVariables.extend({
  HOST: z.string().min(1).default('127.0.0.1'),
  PORT: z.coerce.number().int().min(0).max(65_535).default(4173),
  /** Where Next listens; the API passes on what is not its own. */
  ESPALIER_WEB_ORIGIN: origin,
  /** How many proxies before the API may name the visitor's address. */
  ESPALIER_TRUSTED_PROXIES: z.coerce.number().int().min(0).max(10).default(0),
  /** Shared with Next alone, which names a page's visitor by it; without one all pages count as one visitor. */
  ESPALIER_WEB_KEY: z.string().min(32).optional(),
  /** How many checks of patterns are computed at once, each in a thread of its own: on few cores one, else two. */
  ESPALIER_CHECK_THREADS: count(availableParallelism() > 2 ? 2 : 1, 16),
  LOG_LEVEL: z.enum(['error', 'warn', 'info', 'debug', 'silent']).default('info'),
})

const migrationVariables = z.object({
  /** The database as its owner, who may create roles. */
  DATABASE_URL: databaseUrl,
  ESPALIER_APP_PASSWORD: z.string().min(16),
  ESPALIER_IDENTITY_PASSWORD: z.string().min(16),
  /** Without one nobody can log in as the signer. */
  ESPALIER_SIGNER_PASSWORD: z.string().min(16).optional(),
  /** Compared with what the database remembers of its key, before anything is changed. */
  ESPALIER_KEK: nameKey,
})

export type MigrationConfig = {
  readonly ownerUrl: string
  readonly passwords: RolePasswords
  readonly keyEncryptionKey: Buffer
}

export type DatabaseConfig = {
  readonly appUrl: string
  readonly identityUrl: string
  readonly appConnections: number
  readonly identityConnections: number
  /** The key that wraps the children's keys: 32 bytes. */
  readonly keyEncryptionKey: Buffer
  readonly origin: string
}

export type ServerConfig = DatabaseConfig & {
  readonly host: string
  readonly port: number
  readonly webOrigin: string
  readonly trustedProxies: number
  readonly webKey: string | null
  readonly checkThreads: number
  readonly logLevel: z.infer<typeof serverVariables>['LOG_LEVEL']
}

type Environment = Readonly<Record<string, string | undefined>>

/** The environment does not say what the program needs; the message names each variable and never its value. */
export class ConfigError extends Error {
  override readonly name = 'ConfigError'
}

/** What a program needs that speaks to the database only, such as the one that makes a club. */
export function readDatabaseConfig(environment: Environment): DatabaseConfig {
  return databaseConfigOf(parse(databaseVariables, environment))
}

export function readServerConfig(environment: Environment): ServerConfig {
  const variables = parse(serverVariables, environment)
  return {
    ...databaseConfigOf(variables),
    host: variables.HOST,
    port: variables.PORT,
    webOrigin: variables.ESPALIER_WEB_ORIGIN,
    trustedProxies: variables.ESPALIER_TRUSTED_PROXIES,
    webKey: variables.ESPALIER_WEB_KEY ?? null,
    checkThreads: variables.ESPALIER_CHECK_THREADS,
    logLevel: variables.LOG_LEVEL,
  }
}

/** What the program needs that makes roles and tables; it alone knows the owner. */
export function readMigrationConfig(environment: Environment): MigrationConfig {
  const variables = parse(migrationVariables, environment)
  return {
    ownerUrl: variables.DATABASE_URL,
    keyEncryptionKey: Buffer.from(variables.ESPALIER_KEK, 'base64url'),
    passwords: {
      espalier_app: variables.ESPALIER_APP_PASSWORD,
      espalier_identity: variables.ESPALIER_IDENTITY_PASSWORD,
      espalier_signer: variables.ESPALIER_SIGNER_PASSWORD ?? null,
    },
  }
}

function databaseConfigOf(variables: z.infer<typeof databaseVariables>): DatabaseConfig {
  return {
    appUrl: variables.ESPALIER_APP_DATABASE_URL,
    identityUrl: variables.ESPALIER_IDENTITY_DATABASE_URL,
    appConnections: variables.ESPALIER_APP_CONNECTIONS,
    identityConnections: variables.ESPALIER_IDENTITY_CONNECTIONS,
    keyEncryptionKey: Buffer.from(variables.ESPALIER_KEK, 'base64url'),
    origin: variables.ESPALIER_ORIGIN,
  }
}

function parse<Shape extends z.ZodObject>(shape: Shape, environment: Environment): z.infer<Shape> {
  const parsed = shape.safeParse(environment)
  if (parsed.success) return parsed.data
  const reasons = parsed.error.issues.map((issue) => {
    const name = issue.path.join('.')
    return `  ${name}: ${environment[name] === undefined ? 'is not set' : issue.message}`
  })
  throw new ConfigError(`the environment is not complete:\n${reasons.join('\n')}`)
}

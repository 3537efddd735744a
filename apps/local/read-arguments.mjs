// What the command line and the environment ask for, checked once.

const FLAGS = ['--dev', '--build-only']

/**
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string | undefined>>} environment
 */
export function readArguments(args, environment) {
  const unknown = args.find((argument) => !FLAGS.includes(argument))
  if (unknown) throw new Error(`I do not know ${unknown}. There are ${FLAGS.join(' and ')}.`)
  return {
    development: args.includes('--dev'),
    buildOnly: args.includes('--build-only'),
    port: readPort(environment.PORT),
    folder: environment.ESPALIER_DATA || null,
    databaseUrl: readDatabaseUrl(environment.DATABASE_URL),
    trustedProxies: readTrustedProxies(environment.ESPALIER_TRUSTED_PROXIES),
  }
}

export function readPort(text) {
  if (text === undefined || text === '') return 4173
  const port = Number(text)
  if (!Number.isInteger(port) || port < 1 || port > 65_535) {
    throw new Error(`PORT is ${text}; it must be a whole number from 1 to 65535.`)
  }
  return port
}

export function readDatabaseUrl(text) {
  if (text === undefined || text === '') return null
  if (!/^postgres(ql)?:\/\//.test(text)) throw new Error('DATABASE_URL must begin with postgresql://')
  return text
}

/** How many proxies before the API may name the visitor's address; null where nobody said. */
function readTrustedProxies(text) {
  if (text === undefined || text === '') return null
  if (!/^([0-9]|10)$/.test(text)) throw new Error(`ESPALIER_TRUSTED_PROXIES is ${text}; it must be from 0 to 10.`)
  return text
}

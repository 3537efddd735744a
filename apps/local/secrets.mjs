// The passwords of the database and the key that wraps the keys of children's names: made once, readable by their
// owner only, and never in the database. Whoever copies the data folder, or has the database elsewhere by DATABASE_URL,
// must keep this file with it: the database remembers its key and takes no other.
import { randomBytes } from 'node:crypto'
import { chmodSync, existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const NAMES = ['postgres', 'app', 'identity', 'signer', 'keyEncryptionKey']

/** @returns {Record<'postgres' | 'app' | 'identity' | 'signer' | 'keyEncryptionKey', string>} */
export function readSecrets(folder, environment = process.env) {
  mkdirSync(folder, { recursive: true })
  const file = join(folder, 'secrets.json')
  const known = existsSync(file) ? JSON.parse(readFileSync(file, 'utf8')) : {}
  const missing = NAMES.filter((name) => typeof known[name] !== 'string')
  if (missing.length > 0) {
    for (const name of missing) known[name] = randomBytes(32).toString('base64url')
    writeWhole(file, `${JSON.stringify(known, null, 2)}\n`)
  }
  chmodSync(file, 0o600)
  return { ...known, keyEncryptionKey: environment.ESPALIER_KEK || known.keyEncryptionKey }
}

/** Written beside its place and renamed: a crash leaves the old file or the new one, never half of either. */
export function writeWhole(file, text) {
  writeFileSync(`${file}.new`, text, { mode: 0o600 })
  renameSync(`${file}.new`, file)
}

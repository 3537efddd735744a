import { readFileSync } from 'node:fs'
import { join } from 'node:path'

let hashes: readonly string[] | null = null

/**
 * The hashes that build/field-hashes.mjs found in the prerendered field pages, read once a process.
 * Without the file no inline script is allowed: the page then shows but does not start, and the build is to blame.
 */
export function readFieldScriptHashes(): readonly string[] {
  hashes ??= JSON.parse(readFileSync(join(process.cwd(), '.next', 'field-hashes.json'), 'utf8')) as string[]
  return hashes
}

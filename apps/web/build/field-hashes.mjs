// The field pages are static, so their inline scripts are known after the build: each is allowed by its SHA-256.
import { createHash } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'

const INLINE_SCRIPT = /<script\b(?![^>]*\bsrc=)[^>]*>([\s\S]*?)<\/script>/g

/** The CSP source expressions of all inline scripts of a page, without repeats. */
export function inlineScriptHashes(html) {
  const hashes = [...html.matchAll(INLINE_SCRIPT)].map(
    (match) => `sha256-${createHash('sha256').update(match[1], 'utf8').digest('base64')}`,
  )
  return [...new Set(hashes)]
}

/** Reads the prerendered field pages under `.next` and writes `field-hashes.json` beside them. */
export function writeFieldHashes(nextFolder) {
  const pages = fieldPages(join(nextFolder, 'server', 'app'))
  if (pages.length === 0) throw new Error('The build made no static field page: is /field rendered per request?')
  const hashes = [...new Set(pages.flatMap((page) => inlineScriptHashes(readFileSync(page, 'utf8'))))].sort()
  writeFileSync(join(nextFolder, 'field-hashes.json'), `${JSON.stringify(hashes, null, 2)}\n`)
  return { pages: pages.length, hashes: hashes.length }
}

function fieldPages(appFolder) {
  const below = join(appFolder, 'field')
  const nested = existsSync(below)
    ? readdirSync(below, { recursive: true })
        .map((name) => join(below, String(name)))
        .filter((path) => path.endsWith('.html'))
    : []
  const top = join(appFolder, 'field.html')
  return existsSync(top) ? [top, ...nested] : nested
}

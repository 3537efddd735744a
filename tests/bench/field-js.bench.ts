// JavaScript of the coach's first page over the framework's empty page, both from the same build and compressed alike (gzip,
// level 9, as an ordinary front door does). The planner's worker and the other views load after the first page and are not in it.
// Build first: npm run build.
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { gzipSync } from 'node:zlib'

const GOAL_KB = 48
const built = fileURLToPath(new URL('../../apps/web/.next/', import.meta.url))
const pages = join(built, 'server', 'app')

/** Scripts a page asks for at once, but those for browsers without modules. */
function listScripts(page: string): readonly string[] {
  const file = join(pages, `${page}.html`)
  if (!existsSync(file)) throw new Error(`${page}.html is not built: run "npm run build" first`)
  const tags = readFileSync(file, 'utf8').match(/<script[^>]*\bsrc="[^"]+"[^>]*>/g) ?? []
  const addresses = tags
    .filter((tag) => !/\bnoModule\b/i.test(tag))
    .map((tag) => /\bsrc="\/_next\/([^"?]+)/.exec(tag)?.[1])
    .filter((address) => address !== undefined)
  if (addresses.length === 0) throw new Error(`${page}.html asks for no script: the build looks different now`)
  return [...new Set(addresses)]
}

function compressedBytes(scripts: readonly string[]): number {
  return scripts.reduce((sum, script) => sum + gzipSync(readFileSync(join(built, script)), { level: 9 }).length, 0)
}

function kilobytes(bytes: number): number {
  return Math.round(bytes / 100) / 10
}

// The page for an unknown address holds nothing but the framework.
const floor = compressedBytes(listScripts('_not-found'))
const field = compressedBytes(listScripts('field'))
if (field <= floor) throw new Error('the field page holds nothing of its own: is it built from this source?')
const figure = {
  figure: 'field.js',
  value: kilobytes(field - floor),
  unit: 'kB',
  floor: kilobytes(floor),
  ratio: Math.round((field / floor) * 100) / 100,
  goal: GOAL_KB,
}
process.stdout.write(`${JSON.stringify(figure)}\n`)

// Builds the web app and then writes down the hashes of the field pages' inline scripts.
import { spawnSync } from 'node:child_process'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { writeFieldHashes } from './field-hashes.mjs'

const webFolder = dirname(dirname(fileURLToPath(import.meta.url)))
const nextCommand = createRequire(import.meta.url).resolve('next/dist/bin/next')

const built = spawnSync(process.execPath, [nextCommand, 'build'], {
  cwd: webFolder,
  stdio: 'inherit',
  env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
})
if (built.status !== 0) process.exit(built.status ?? 1)

const written = writeFieldHashes(join(webFolder, '.next'))
console.log(`Field pages: ${written.pages} with ${written.hashes} inline scripts allowed by hash.`)

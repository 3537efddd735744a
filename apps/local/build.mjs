// Builds what changed since it was last built. A stamp beside each result holds the hash of all it was made from.
import { spawn } from 'node:child_process'
import { createHash } from 'node:crypto'
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { withBuildLock } from './build-lock.mjs'

const EVERYWHERE = ['package-lock.json', 'tsconfig.base.json', 'packages']

// What a step reads, the command that makes it, a file it makes, and the stamp.
const STEPS = {
  client: {
    says: 'the database client',
    from: ['prisma/schema.prisma', 'prisma.config.ts', 'package-lock.json'],
    command: ['node_modules/prisma/build/index.js', 'generate', '--config', 'prisma.config.ts'],
    makes: 'apps/api/src/db/generated/client.ts',
    stamp: 'apps/api/src/db/generated/.stamp',
  },
  api: {
    says: 'the API',
    from: [...EVERYWHERE, 'apps/api', 'prisma/schema.prisma', 'prisma/demo'],
    command: ['apps/api/build.mjs'],
    makes: 'apps/api/dist/migrate.js',
    stamp: 'apps/api/dist/.stamp',
  },
  web: {
    says: 'the pages',
    from: [...EVERYWHERE, 'apps/web'],
    command: ['apps/web/build/build.mjs'],
    makes: 'apps/web/.next/BUILD_ID',
    stamp: 'apps/web/.next/.stamp',
  },
}

// Results and tests change nothing that is built.
const LEFT_OUT = /^(node_modules|dist|out|\.next|\.turbo|generated|tsconfig\.tsbuildinfo|next-env\.d\.ts|sw\.js|fonts)$/
const TESTS = /\.(test|fixture|oracle)\.[a-z]+$/

/** Builds the named steps that are out of date: the client first, because the API holds it; the rest side by side. */
export function ensureBuilt(root, names = Object.keys(STEPS)) {
  return withBuildLock(join(root, 'node_modules', '.espalier-build'), () => buildSteps(root, names))
}

async function buildSteps(root, names) {
  if (names.includes('client')) await ensureStep(root, STEPS.client)
  const rest = names.filter((name) => name !== 'client')
  const done = await Promise.allSettled(rest.map((name) => ensureStep(root, STEPS[name])))
  const failed = done.find((result) => result.status === 'rejected')
  if (failed) throw failed.reason
}

async function ensureStep(root, step) {
  const hash = hashOf(root, step.from)
  const stamp = join(root, step.stamp)
  const fresh = existsSync(stamp) && readFileSync(stamp, 'utf8') === hash && existsSync(join(root, step.makes))
  if (fresh) return
  console.log(`Building ${step.says} …`)
  rmSync(stamp, { force: true })
  await runQuietly(root, step)
  mkdirSync(dirname(stamp), { recursive: true })
  writeFileSync(stamp, hash)
}

/** One hash of the names and bytes of all these files. */
export function hashOf(root, paths) {
  const hash = createHash('sha256').update(process.versions.node)
  for (const file of paths.flatMap((path) => listFiles(join(root, path)))) {
    hash.update(`\0${relative(root, file)}\0`).update(readFileSync(file))
  }
  return hash.digest('hex')
}

function listFiles(path) {
  if (!existsSync(path)) return []
  if (!statSync(path).isDirectory()) return [path]
  return readdirSync(path)
    .filter((name) => !LEFT_OUT.test(name) && !TESTS.test(name))
    .sort()
    .flatMap((name) => listFiles(join(path, name)))
}

/** Its output is shown only when it fails. */
function runQuietly(root, { command, says }) {
  return new Promise((resolve, reject) => {
    const env = { ...process.env, NEXT_TELEMETRY_DISABLED: '1', CI: '1', NODE_ENV: 'production' }
    const child = spawn(process.execPath, command, { cwd: root, env, stdio: ['ignore', 'pipe', 'pipe'] })
    const output = []
    child.stdout.on('data', (chunk) => output.push(chunk))
    child.stderr.on('data', (chunk) => output.push(chunk))
    child.on('error', reject)
    child.on('close', (code) => {
      if (code === 0) resolve()
      else reject(new Error(`Building ${says} failed:\n${Buffer.concat(output).toString()}`))
    })
  })
}

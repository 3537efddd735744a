// One launcher a database: it holds an advisory lock through a connection of its own, so the lock ends with it however
// it ends. A note in the data folder says where it serves.
import { existsSync, readFileSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import pg from 'pg'
import { writeWhole } from './secrets.mjs'

// Any fixed number: it only keeps two launchers apart.
const LAUNCHER_LOCK = 5_124_112

export class AlreadyRunningError extends Error {}

export async function takeLock(ownerUrl, folder) {
  const client = new pg.Client({ connectionString: ownerUrl, application_name: 'espalier-launcher', keepAlive: true })
  client.on('error', () => {})
  await client.connect()
  const { rows } = await client.query('select pg_try_advisory_lock($1) as taken', [LAUNCHER_LOCK])
  if (!rows[0].taken) {
    await client.end()
    throw new AlreadyRunningError(alreadyRunning(readNote(folder)))
  }
  return { release: () => client.end().catch(() => {}) }
}

export function writeNote(folder, note) {
  writeWhole(noteFile(folder), JSON.stringify(note))
}

export function readNote(folder) {
  try {
    return JSON.parse(readFileSync(noteFile(folder), 'utf8'))
  } catch {
    return null
  }
}

export function removeNote(folder) {
  rmSync(noteFile(folder), { force: true })
}

/** Says at once that it runs already, before anything is built or started. */
export async function refuseSecondStart(folder) {
  const note = readNote(folder)
  if (note === null || !existsSync(folder)) return
  const answer = await fetch(`${note.address}/livez`, { signal: AbortSignal.timeout(1_500) }).catch(() => null)
  if (answer?.ok && isAlive(note.pid)) throw new AlreadyRunningError(alreadyRunning(note))
}

function alreadyRunning(note) {
  const where = note ? ` at ${note.address} (process ${note.pid})` : ''
  return `Espalier runs already on this data${where}. Stop it first, or choose another folder: ESPALIER_DATA=… PORT=… npm start`
}

function isAlive(pid) {
  try {
    process.kill(pid, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

function noteFile(folder) {
  return join(folder, 'running.json')
}

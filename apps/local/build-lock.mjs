// One build at a time in this folder: two that write the same results at once would leave neither's.
import { readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { setTimeout as pause } from 'node:timers/promises'

const EMPTY_MILLISECONDS = 10_000

/** Waits for its turn, runs the work and lets go. A lock of a process that is gone is taken over. */
export async function withBuildLock(file, work) {
  while (!tryLock(file)) await pause(200)
  try {
    return await work()
  } finally {
    rmSync(file, { force: true })
  }
}

function tryLock(file) {
  try {
    writeFileSync(file, String(process.pid), { flag: 'wx' })
    return true
  } catch (error) {
    if (error.code !== 'EEXIST') throw error
  }
  if (!holderLives(file)) rmSync(file, { force: true })
  return false
}

function holderLives(file) {
  try {
    const holder = Number(readFileSync(file, 'utf8'))
    // Between its making and its writing the file is empty: somebody is there, but not for long.
    if (holder === 0) return Date.now() - statSync(file).mtimeMs < EMPTY_MILLISECONDS
    process.kill(holder, 0)
    return true
  } catch (error) {
    return error.code === 'EPERM'
  }
}

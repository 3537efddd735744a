// The programs that serve: each a child that ends with its parent, writes to its own log, and is stopped in order.
import { spawn } from 'node:child_process'
import { closeSync, existsSync, mkdirSync, openSync, readFileSync, renameSync, statSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { fileURLToPath } from 'node:url'

const CHILD = join(dirname(fileURLToPath(import.meta.url)), 'child.mjs')
const LOG_BYTES_MAX = 10_000_000
const STOP_MILLISECONDS = 10_000

/**
 * Starts `node entry …args` under child.mjs.
 * @param {{ name: string, entry: string, args?: readonly string[], development?: boolean, cwd: string, env: Record<string, string>, logFolder: string }} wish
 */
export function startProgram({ name, entry, args = [], development = false, cwd, env, logFolder }) {
  const log = join(logFolder, `${name}.log`)
  const output = openLog(log)
  const beginning = statSync(log).size
  const child = spawn(process.execPath, [CHILD, entry, ...args], {
    cwd,
    env: { ...inherited(), NODE_ENV: development ? 'development' : 'production', ...env },
    stdio: ['ignore', output, output, 'ipc'],
    // Ctrl-C in a terminal reaches the whole group; the parent alone decides what stops when.
    detached: process.platform !== 'win32',
  })
  closeSync(output)
  const ended = new Promise((resolve) => {
    child.on('error', () => resolve('could not start'))
    child.on('exit', (code, signal) => resolve(signal ?? `code ${code}`))
  })
  return {
    name,
    ended,
    isRunning: () => child.exitCode === null && child.signalCode === null,
    tail: () => readFileSync(log).subarray(beginning).toString().split('\n').slice(-25).join('\n').trim(),
    stop: () => stopChild(child, ended),
  }
}

/** Runs a program to its end and returns what it printed. */
export function runProgram({ name, entry, args = [], cwd, env, signal }) {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [entry, ...args], {
      cwd,
      signal,
      env: { ...inherited(), NODE_ENV: 'production', ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
    })
    const [output, complaints] = [[], []]
    child.stdout.on('data', (chunk) => output.push(chunk))
    child.stderr.on('data', (chunk) => complaints.push(chunk))
    child.on('error', reject)
    child.on('close', (code) => {
      if (code === 0) resolve(Buffer.concat(output).toString())
      else
        reject(
          new Error(
            `${name} failed:\n${Buffer.concat([...output, ...complaints])
              .toString()
              .trim()}`,
          ),
        )
    })
  })
}

async function stopChild(child, ended) {
  if (child.exitCode !== null || child.signalCode !== null) return
  child.kill('SIGTERM')
  const timer = setTimeout(() => child.kill('SIGKILL'), STOP_MILLISECONDS)
  await ended
  clearTimeout(timer)
}

/**
 * What a child may know of our environment: nothing that would choose its database, port or data, and no secret that was
 * meant for one of the others. What a program needs of these it is given by name.
 */
export function inherited(environment = process.env) {
  return Object.fromEntries(Object.entries(environment).filter(([name]) => !KEPT_BACK.test(name)))
}

/** Variables of libpq, of this project, and those that change what a program is. */
const KEPT_BACK = /^(PG.*|ESPALIER_.*|DATABASE_URL|PORT|HOST|NODE_OPTIONS)$/i

function openLog(file) {
  mkdirSync(dirname(file), { recursive: true })
  if (existsSync(file) && statSync(file).size > LOG_BYTES_MAX) renameSync(file, `${file}.1`)
  return openSync(file, 'a', 0o600)
}

import { spawn } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import { freePort } from './ports.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const outer = mkdtempSync(join(tmpdir(), 'espalier-start-'))
chmodSync(outer, 0o755)
let environment
let running

function run(program, args) {
  const child = spawn(process.execPath, [join(here, program), ...args], {
    env: environment,
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const state = { child, output: '', code: undefined }
  const note = (chunk) => {
    state.output += chunk
  }
  child.stdout.on('data', note)
  child.stderr.on('data', note)
  state.ended = new Promise((resolve) => {
    child.on('close', (code, signal) => {
      state.code = code ?? signal
      resolve()
    })
  })
  return state
}

async function startAndWait() {
  running = run('start.mjs', [])
  while (!running.output.includes('Stop it with Ctrl-C') && running.code === undefined) await pause(20)
  return running.output
}

async function stopRunning() {
  if (running?.code === undefined) running?.child.kill('SIGTERM')
  await running?.ended
}

/** As apps/api sets it by default. */
const ANONYMOUS_A_MINUTE = 60

/** The demo's director: ids of the demo are made from names, so they are the same on every machine. */
const DIRECTOR_ID = 'caae3651-51fa-8cdd-b5e9-29890e9a1d10'

const linksIn = (output) => [...output.matchAll(/http:\S+\/sign-in#([0-9a-f-]{36})\.([A-Za-z0-9_-]{43})/g)]

// Builds first where the sources are newer than what was built.
beforeAll(async () => {
  environment = {
    ...process.env,
    DATABASE_URL: '',
    ESPALIER_DATA: join(outer, 'data'),
    PORT: String(await freePort()),
    // The tests stand for a proxy, and so for several visitors.
    ESPALIER_TRUSTED_PROXIES: '1',
  }
  await startAndWait()
}, 300_000)

afterAll(async () => {
  await stopRunning()
  rmSync(outer, { recursive: true, force: true })
})

describe('npm start, with the real API and pages', () => {
  test('serves API and pages on one origin and prints a different link for each role of the demo club', async () => {
    const origin = `http://127.0.0.1:${environment.PORT}`
    expect(running.output).toContain(`Espalier is ready: ${origin}`)
    const links = linksIn(running.output)
    for (const role of ['administrator', 'director', 'coach', 'assistant', 'auditor'])
      expect(running.output).toContain(role)
    expect(new Set(links.map((link) => link[2])).size).toBe(links.length)
    expect(links.length).toBeGreaterThanOrEqual(5)
    expect((await fetch(`${origin}/readyz`)).status).toBe(200)
    const page = await fetch(origin)
    expect(page.status).toBe(200)
    expect(await page.text()).toContain('<html')
    const unknown = await fetch(`${origin}/v1/clubs/${links[0][1]}`)
    expect(unknown.headers.get('content-type')).toContain('application/problem+json')
  })

  test('a visitor who looks at pages too often is refused there and leaves the others theirs', async () => {
    // A login that is none: each page asks the API who that is, and the API counts the question as anonymous.
    const cookie = `__Host-espalier-login=${'A'.repeat(43)}`
    const readPage = async (visitor) => {
      const headers = { cookie, 'x-forwarded-for': visitor }
      return (await fetch(`http://127.0.0.1:${environment.PORT}/`, { headers })).status
    }
    const statuses = []
    for (let at = 0; at <= ANONYMOUS_A_MINUTE; at += 1) statuses.push(await readPage('192.0.2.1'))
    expect([new Set(statuses.slice(0, -1)), statuses.at(-1)]).toEqual([new Set([200]), 500])
    expect(await readPage('192.0.2.2')).toBe(200)
  })

  test('npm run club makes a club beside it, with a link to the same origin', async () => {
    const club = run('club.mjs', ['new', '--name', 'Heron Meadow', '--zone', 'Europe/Oslo'])
    await club.ended
    expect(club.code).toBe(0)
    expect(linksIn(club.output).length).toBe(1)
    expect(club.output).toContain(`http://127.0.0.1:${environment.PORT}/sign-in#`)
  })

  test('npm run club makes a new link for a person, and says so where there is none such', async () => {
    const clubId = linksIn(running.output)[0][1]
    const stranger = run('club.mjs', ['link', '--club', clubId, '--person', clubId])
    await stranger.ended
    expect(stranger.code).toBe(1)
    expect(stranger.output).toContain('There is no such person in such a club.')
    const link = run('club.mjs', ['link', '--club', clubId, '--person', DIRECTOR_ID])
    await link.ended
    expect(link.code).toBe(0)
    expect(linksIn(link.output).length).toBe(1)
  })

  test('the next start is made of what was built, and its links are new', async () => {
    const before = linksIn(running.output).map((link) => link[2])
    await stopRunning()
    expect(running.code).toBe(0)
    const output = await startAndWait()
    expect(output).not.toMatch(/Building|Installing/)
    const after = linksIn(output).map((link) => link[2])
    expect(after.length).toBe(before.length)
    expect(after.filter((token) => before.includes(token))).toEqual([])
  })

  test('npm run club works alone too, and leaves nothing running', async () => {
    await stopRunning()
    const club = run('club.mjs', ['new', '--name', 'Otter Bank'])
    await club.ended
    expect(club.code).toBe(0)
    expect(club.output).toContain('Start Espalier with npm start')
    const cluster = join(environment.ESPALIER_DATA, 'postgres', 'cluster')
    expect([existsSync(cluster), existsSync(join(cluster, 'postmaster.pid'))]).toEqual([true, false])
  })
})

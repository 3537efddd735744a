import { spawn } from 'node:child_process'
import { chmodSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { createServer } from 'node:net'
import { networkInterfaces, tmpdir } from 'node:os'
import { dirname, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { fileURLToPath } from 'node:url'
import pg from 'pg'
import { afterEach, beforeAll, describe, expect, test } from 'vitest'
import { ensureBuilt } from './build.mjs'
import { freePort } from './ports.mjs'
import { startPostgres } from './postgres.mjs'
import { folderElsewhere } from './run-as.mjs'

const here = dirname(fileURLToPath(import.meta.url))
const root = dirname(dirname(here))
const started = []
const folders = []

beforeAll(() => ensureBuilt(root, ['client', 'api']), 120_000)

afterEach(async () => {
  for (const launcher of started.splice(0).reverse()) await launcher.stop()
  for (const folder of folders.splice(0)) rmSync(folder, { recursive: true, force: true })
})

function newFolder() {
  const folder = mkdtempSync(join(tmpdir(), 'espalier-launch-'))
  folders.push(folder)
  // Made for us alone; as root, the server's own user must be able to pass through.
  chmodSync(folder, 0o755)
  return join(folder, 'data')
}

/** Starts the launcher with stand-ins; resolves when it is ready or has ended. */
async function start(folder, port, environment = {}) {
  const child = spawn(process.execPath, [join(here, 'launch.fixture.mjs')], {
    env: { ...process.env, DATABASE_URL: '', ...environment, ESPALIER_DATA: folder, PORT: String(port) },
    stdio: ['ignore', 'pipe', 'pipe'],
  })
  const launcher = { child, output: '', code: undefined, milliseconds: 0, stop: () => end(launcher, 'SIGTERM') }
  started.push(launcher)
  const note = (chunk) => {
    launcher.output += chunk
  }
  child.stdout.on('data', note)
  child.stderr.on('data', note)
  launcher.ended = new Promise((resolve) => {
    child.on('close', (code, signal) => {
      launcher.code = code ?? signal
      resolve()
    })
  })
  const beginning = performance.now()
  while (!launcher.output.includes('is ready') && launcher.code === undefined) await pause(10)
  launcher.milliseconds = performance.now() - beginning
  return launcher
}

async function startAndAdd(folder, port) {
  const launcher = await start(folder, port)
  await ask(port, '/add')
  return launcher
}

async function end(launcher, signal) {
  if (launcher.code === undefined) launcher.child.kill(signal)
  await launcher.ended
}

async function ask(port, path) {
  return (await fetch(`http://127.0.0.1:${port}${path}`)).json()
}

function postmasterPid(folder) {
  const file = join(folder, 'postgres/cluster/postmaster.pid')
  return existsSync(file) ? Number(readFileSync(file, 'utf8').split('\n')[0]) : null
}

/** A process and all below it, by the parents that the kernel names. */
function familyOf(pid) {
  const parents = readdirSync('/proc')
    .filter((name) => /^\d+$/.test(name))
    .map((name) => ({ pid: Number(name), parent: parentOf(name) }))
  const family = [pid]
  for (const member of family) family.push(...parents.filter((row) => row.parent === member).map((row) => row.pid))
  return family
}

function parentOf(name) {
  try {
    return Number(/^PPid:\s+(\d+)$/m.exec(readFileSync(`/proc/${name}/status`, 'utf8'))?.[1])
  } catch {
    return null
  }
}

function killAtOnce(pids) {
  for (const pid of pids) {
    try {
      process.kill(pid, 'SIGKILL')
    } catch (error) {
      if (error.code !== 'ESRCH') throw error
    }
  }
}

/** The environment of the stand-in with this name. */
function environmentOf(launcher, name) {
  const pid = familyOf(launcher.child.pid).find((one) => readFileSync(`/proc/${one}/cmdline`, 'utf8').includes(name))
  const lines = readFileSync(`/proc/${pid}/environ`, 'utf8').split('\0')
  return Object.fromEntries(lines.map((line) => [line.slice(0, line.indexOf('=')), line.slice(line.indexOf('=') + 1)]))
}

const isAlive = (pid) => existsSync(`/proc/${pid}`) && !/^State:\s+Z/m.test(readFileSync(`/proc/${pid}/status`, 'utf8'))

describe('the launcher', () => {
  test('the first start makes everything, on 127.0.0.1 only, and keeps its secrets to itself', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const launcher = await start(folder, port)
    expect(launcher.output).toContain(`Espalier is ready: http://127.0.0.1:${port}`)
    expect(await ask(port, '/count')).toEqual([{ count: 0 }])
    expect(statSync(join(folder, 'secrets.json')).mode & 0o777).toBe(0o600)
    for (const secret of Object.values(JSON.parse(readFileSync(join(folder, 'secrets.json'), 'utf8')))) {
      expect(launcher.output).not.toContain(secret)
      expect(secret.length).toBe(43)
    }
    const outside = Object.values(networkInterfaces())
      .flat()
      .find((address) => address.family === 'IPv4' && !address.internal)
    const database = Number(readFileSync(join(folder, 'postgres/cluster/postmaster.pid'), 'utf8').split('\n')[3])
    for (const open of outside ? [port, database] : []) {
      await expect(fetch(`http://${outside.address}:${open}/`)).rejects.toThrow()
    }
  })

  test('one signal stops everything cleanly, a second one changes nothing, and the next start has all data', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const first = await startAndAdd(folder, port)
    const family = familyOf(first.child.pid)
    const postmaster = postmasterPid(folder)
    first.child.kill('SIGINT')
    first.child.kill('SIGINT')
    await first.ended
    expect(first.code).toBe(0)
    expect([...family, postmaster].filter(isAlive)).toEqual([])
    expect(postmasterPid(folder)).toBeNull()
    expect(readFileSync(join(folder, 'postgres/postgres.log'), 'utf8')).toContain('database system is shut down')
    await start(folder, port)
    expect(await ask(port, '/count')).toEqual([{ count: 1 }])
  })

  test('a second start on the same data says so and leaves the first alone', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    await start(folder, port)
    const second = await start(folder, await freePort())
    expect(second.code).toBe(1)
    expect(second.output).toContain(`runs already on this data at http://127.0.0.1:${port}`)
    expect(await ask(port, '/count')).toEqual([{ count: 0 }])
  })

  test('two starts at the same moment end with one that serves', async () => {
    const folder = newFolder()
    const first = await start(folder, await freePort())
    await end(first, 'SIGTERM')
    const both = await Promise.all([start(folder, await freePort()), start(folder, await freePort())])
    expect(both.filter((launcher) => launcher.output.includes('is ready')).length).toBe(1)
    expect(both.filter((launcher) => launcher.code === 1).length).toBe(1)
  })

  test('a taken port is named, with what to do', async () => {
    const port = await freePort()
    const other = createServer().listen(port, '127.0.0.1')
    const launcher = await start(newFolder(), port)
    other.close()
    expect(launcher.code).toBe(1)
    expect(launcher.output).toContain(`Port ${port} is taken by another program. Choose another: PORT=${port + 1}`)
  })

  test('after kill -9 of the launcher alone its programs end, and the next start takes the database over', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const first = await startAndAdd(folder, port)
    const programs = familyOf(first.child.pid).slice(1)
    const postmaster = postmasterPid(folder)
    expect(programs.length).toBe(2)
    await end(first, 'SIGKILL')
    const second = await start(folder, port)
    expect(second.output).toContain('is ready')
    expect(programs.filter(isAlive)).toEqual([])
    expect(postmasterPid(folder)).toBe(postmaster)
    expect(await ask(port, '/count')).toEqual([{ count: 1 }])
    await end(second, 'SIGTERM')
    expect(isAlive(postmaster)).toBe(false)
  })

  test('after kill -9 of everything the next start has every row that was acknowledged', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const first = await start(folder, port)
    let acknowledged = 0
    const writing = (async () => {
      for (;;) {
        await ask(port, '/add')
        acknowledged += 1
      }
    })().catch(() => null)
    while (acknowledged < 50) await pause(5)
    killAtOnce([...familyOf(first.child.pid), ...familyOf(postmasterPid(folder))])
    await writing
    await first.ended
    const second = await start(folder, port)
    const [{ count }] = await ask(port, '/count')
    expect(second.output).toContain('is ready')
    // One more may have been committed whose answer was lost.
    expect([acknowledged, acknowledged + 1]).toContain(count)
  })

  test('a note of a process id that another program has now does not stop the start', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    await end(await start(folder, port), 'SIGTERM')
    const file = join(folder, 'postgres/cluster/postmaster.pid')
    writeFileSync(file, `${process.pid}\n${dirname(file)}\n0\n5432\n\n127.0.0.1\n  0 0\nready\n`)
    expect((await start(folder, port)).output).toContain('is ready')
  })

  test('a folder that the server may not enter keeps its database elsewhere, and the data is found again', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    chmodSync(dirname(folder), 0o700)
    await end(await startAndAdd(folder, port), 'SIGTERM')
    await start(folder, port)
    expect(await ask(port, '/count')).toEqual([{ count: 1 }])
    const inside = existsSync(join(folder, 'postgres/cluster'))
    const elsewhere = folderElsewhere(join(folder, 'postgres'))
    // Only a start by root has another user for the server.
    expect({ inside, elsewhere: existsSync(elsewhere) }).toEqual(
      process.getuid() === 0 ? { inside: false, elsewhere: true } : { inside: true, elsewhere: false },
    )
    folders.push(elsewhere)
  })

  test('a program that ends by itself ends the launcher, with the last words of its log', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const launcher = await start(folder, port)
    const api = familyOf(launcher.child.pid).find((pid) =>
      readFileSync(`/proc/${pid}/cmdline`, 'utf8').endsWith('api\0'),
    )
    killAtOnce([api])
    await launcher.ended
    expect(launcher.code).toBe(1)
    expect(launcher.output).toContain('The api ended by itself (SIGKILL)')
    expect(postmasterPid(folder)).toBeNull()
  })

  test('API and pages share a key of this start alone, and the API hears how many proxies to trust', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const keys = []
    for (const environment of [{ ESPALIER_TRUSTED_PROXIES: '2', ESPALIER_WEB_KEY: 'of the shell' }, {}]) {
      const launcher = await start(folder, port, environment)
      const [api, web] = ['\0api\0', '\0web\0'].map((name) => environmentOf(launcher, name))
      expect(api.ESPALIER_WEB_KEY).toMatch(/^[\w-]{43}$/)
      expect(web.ESPALIER_WEB_KEY).toBe(api.ESPALIER_WEB_KEY)
      expect([api.ESPALIER_TRUSTED_PROXIES, web.ESPALIER_TRUSTED_PROXIES]).toEqual([
        environment.ESPALIER_TRUSTED_PROXIES,
        undefined,
      ])
      keys.push(api.ESPALIER_WEB_KEY)
      await end(launcher, 'SIGTERM')
    }
    expect(new Set(keys).size).toBe(2)
  })

  test('DATABASE_URL takes another server, which keeps running and never gives its owner to a program', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const server = await startPostgres({ folder: join(newFolder(), 'other'), password: 'a-password-of-the-owner' })
    // Ended last, after what uses it.
    started.unshift(server)
    const launcher = await start(folder, port, { DATABASE_URL: server.urlOf('the club') })
    expect(launcher.output).toContain('is ready')
    expect(await ask(port, '/add')).toEqual([{ name: 'Season 0' }])
    for (const pid of familyOf(launcher.child.pid).slice(1)) {
      expect(readFileSync(`/proc/${pid}/environ`, 'utf8')).not.toContain('a-password-of-the-owner')
    }
    expect(existsSync(join(folder, 'postgres'))).toBe(false)
    await end(launcher, 'SIGTERM')
    expect((await start(folder, port, { DATABASE_URL: server.urlOf('the club') })).output).toContain('is ready')
    expect(await ask(port, '/count')).toEqual([{ count: 1 }])
  })

  test('without its secrets an external database is refused untouched, and with them back it is found again', async () => {
    const [folder, port] = [newFolder(), await freePort()]
    const server = await startPostgres({ folder: join(newFolder(), 'other'), password: 'a-password-of-the-owner' })
    started.unshift(server)
    const DATABASE_URL = server.urlOf('the club')
    const first = await start(folder, port, { DATABASE_URL })
    await ask(port, '/add')
    await end(first, 'SIGTERM')
    const file = join(folder, 'secrets.json')
    const secrets = readFileSync(file, 'utf8')
    rmSync(file)
    const second = await start(folder, port, { DATABASE_URL })
    expect(second.code).toBe(1)
    expect(second.output).toContain('Put the secrets.json that belongs to this database back')
    writeFileSync(file, secrets)
    const app = new URL(DATABASE_URL)
    app.username = 'espalier_app'
    app.password = JSON.parse(secrets).app
    const client = new pg.Client({ connectionString: app.href })
    // The password of before: the refused start has set none of its own.
    await client.connect()
    await client.end()
    expect((await start(folder, port, { DATABASE_URL })).output).toContain('is ready')
    expect(await ask(port, '/count')).toEqual([{ count: 1 }])
  })
})

import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  utimesSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, test } from 'vitest'
import { hashOf } from './build.mjs'
import { withBuildLock } from './build-lock.mjs'
import { isInstalled, refuseOldNode } from './install.mjs'
import { writeNewFile } from './postgres.mjs'
import { inherited } from './programs.mjs'
import { readArguments, readDatabaseUrl, readPort } from './read-arguments.mjs'
import { readSecrets } from './secrets.mjs'

const folders = []
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true })
})

function newFolder() {
  const folder = mkdtempSync(join(tmpdir(), 'espalier-prepare-'))
  folders.push(folder)
  return folder
}

describe('what is asked for', () => {
  test('is read from the command line and the environment, with plain defaults', () => {
    expect(readArguments([], {})).toEqual({
      development: false,
      buildOnly: false,
      port: 4173,
      folder: null,
      databaseUrl: null,
      trustedProxies: null,
    })
    expect(readArguments(['--build-only'], { PORT: '5000', ESPALIER_DATA: 'here' })).toMatchObject({
      buildOnly: true,
      port: 5000,
      folder: 'here',
    })
  })

  test('a wrong port, address or flag is named', () => {
    for (const text of ['0', '65536', '80.5', 'web']) expect(() => readPort(text)).toThrow(`PORT is ${text}`)
    expect(() => readDatabaseUrl('mysql://x')).toThrow('postgresql://')
    expect(() => readArguments(['--fast'], {})).toThrow('--fast')
    for (const text of ['-1', '11', '1.5', 'all']) {
      expect(() => readArguments([], { ESPALIER_TRUSTED_PROXIES: text })).toThrow(`ESPALIER_TRUSTED_PROXIES is ${text}`)
    }
  })

  test('a Node that is too old is named with the oldest that works', () => {
    for (const version of ['20.18.3', '18.20.0']) expect(() => refuseOldNode(version)).toThrow(/Node 20\.19 or newer/)
    for (const version of ['20.19.0', '22.0.0', '24.1.0']) expect(() => refuseOldNode(version)).not.toThrow()
  })
})

describe('installing', () => {
  test('is wanted without packages, after another lockfile, and not otherwise', () => {
    const root = newFolder()
    writeFileSync(join(root, 'package-lock.json'), 'one')
    expect(isInstalled(root)).toBe(false)

    mkdirSync(join(root, 'node_modules'))
    writeFileSync(join(root, 'node_modules', '.package-lock.json'), '')
    expect(isInstalled(root)).toBe(true)

    writeFileSync(join(root, 'package-lock.json'), 'two')
    expect(isInstalled(root)).toBe(false)
  })

  test('is wanted when the lockfile is newer than what was installed by hand', () => {
    const root = newFolder()
    mkdirSync(join(root, 'node_modules'))
    writeFileSync(join(root, 'node_modules', '.package-lock.json'), '')
    writeFileSync(join(root, 'package-lock.json'), 'one')
    const later = Date.now() / 1_000 + 60
    utimesSync(join(root, 'package-lock.json'), later, later)
    expect(isInstalled(root)).toBe(false)
  })
})

describe('building', () => {
  test('is wanted when a byte or a name of a source changes, not when a test or a result does', () => {
    const root = newFolder()
    mkdirSync(join(root, 'src'))
    writeFileSync(join(root, 'src', 'one.ts'), 'one')
    const first = hashOf(root, ['src'])
    writeFileSync(join(root, 'src', 'one.test.ts'), 'test')
    mkdirSync(join(root, 'src', 'dist'))
    writeFileSync(join(root, 'src', 'dist', 'one.js'), 'built')
    expect(hashOf(root, ['src'])).toBe(first)
    writeFileSync(join(root, 'src', 'two.ts'), '')
    const second = hashOf(root, ['src'])
    expect(second).not.toBe(first)
    writeFileSync(join(root, 'src', 'two.ts'), 'two')
    expect(hashOf(root, ['src'])).not.toBe(second)
  })
})

describe('two builds', () => {
  test('run one after the other, also after one that failed or was killed', async () => {
    const file = join(newFolder(), 'lock')
    const order = []
    const work = (name) => async () => {
      order.push(`${name} begins`)
      await new Promise((resolve) => setTimeout(resolve, 20))
      order.push(`${name} ends`)
    }
    await Promise.all([withBuildLock(file, work('one')), withBuildLock(file, work('two'))])
    expect(order).toEqual(['one begins', 'one ends', 'two begins', 'two ends'])
    await expect(withBuildLock(file, () => Promise.reject(new Error('broken')))).rejects.toThrow('broken')
    writeFileSync(file, '999999999')
    expect(await withBuildLock(file, async () => 'done')).toBe('done')
  })
})

describe('secrets', () => {
  test('are made once, differ, stay, and are for their owner only', () => {
    const folder = newFolder()
    const first = readSecrets(folder, {})
    expect(new Set(Object.values(first)).size).toBe(5)
    expect(readSecrets(folder, {})).toEqual(first)
    expect(statSync(join(folder, 'secrets.json')).mode & 0o777).toBe(0o600)
  })

  test('the key of names may come from the environment instead', () => {
    expect(readSecrets(newFolder(), { ESPALIER_KEK: 'from outside' }).keyEncryptionKey).toBe('from outside')
  })
})

describe('a started program', () => {
  test('inherits no secret, database or place of ours, and all else', () => {
    const kept = { PATH: '/bin', HOME: '/home/a', LANG: 'C', PAGER: 'less' }
    const secret = { ESPALIER_KEK: 'k', ESPALIER_APP_DATABASE_URL: 'u', ESPALIER_DATA: 'd', DATABASE_URL: 'u' }
    const database = { PGPASSWORD: 'p', PGHOST: 'h', PGSERVICEFILE: 'f' }
    expect(inherited({ ...kept, ...secret, ...database, PORT: '1', NODE_OPTIONS: '--import x' })).toEqual(kept)
  })
})

describe('the first password', () => {
  test('is written into a new file only, for its owner, and never through a link', () => {
    const folder = newFolder()
    const [target, link, file] = ['target', 'link', 'file'].map((name) => join(folder, name))
    const owner = { uid: process.getuid(), gid: process.getgid() }
    symlinkSync(target, link)
    expect(() => writeNewFile(link, 'secret', owner)).toThrow('EEXIST')
    expect(existsSync(target)).toBe(false)
    writeNewFile(file, 'secret', owner)
    expect(readFileSync(file, 'utf8')).toBe('secret')
    expect(statSync(file).mode & 0o777).toBe(0o600)
    expect(() => writeNewFile(file, 'again', owner)).toThrow('EEXIST')
  })
})

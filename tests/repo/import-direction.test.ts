import { describe, expect, test } from 'vitest'
import { isSource, listProjectFiles, readProjectFile } from './project-files'

// domain ← contract ← api | web: an arrow the other way, or between apps, is a wrong turn in the design.
const mayImport = {
  'packages/domain': [],
  'packages/contract': ['@espalier/domain'],
  'apps/api': ['@espalier/domain', '@espalier/contract'],
  'apps/web': ['@espalier/domain', '@espalier/contract'],
  'apps/local': [],
} as const satisfies Record<string, readonly string[]>

const importLine = /\b(?:from\s+|import\s*\(?\s*)['"]([^'"\n]+)['"]/g

function importsOf(text: string): readonly string[] {
  return [...text.matchAll(importLine)].map((match) => match[1] ?? '')
}

function sourcesOf(part: string): readonly string[] {
  return listProjectFiles().filter((file) => file.startsWith(`${part}/`) && isSource(file))
}

function climbsOutOf(part: string, file: string, target: string): boolean {
  if (!target.startsWith('.')) return false
  const parts = file.split('/').slice(0, -1)
  for (const piece of target.split('/')) {
    if (piece === '..') parts.pop()
    else if (piece !== '.') parts.push(piece)
  }
  return !parts.join('/').startsWith(part)
}

describe('imports run domain ← contract ← api | web', () => {
  for (const [part, allowed] of Object.entries(mayImport)) {
    test(`${part} imports ${allowed.length === 0 ? 'nothing of ours' : allowed.join(' and ')}`, () => {
      const files = sourcesOf(part)
      expect(files.length).toBeGreaterThan(0)
      const wrong = files.flatMap((file) =>
        importsOf(readProjectFile(file))
          .filter((target) => target.startsWith('@espalier/'))
          .filter((target) => !target.startsWith(`@espalier/${part.split('/')[1]}`))
          .filter((target) => !allowed.some((name) => target === name || target.startsWith(`${name}/`)))
          .map((target) => `${file} → ${target}`),
      )
      expect(wrong).toEqual([])
    })
  }

  test('no part reaches into another by a relative path, except tests into tests/support', () => {
    const wrong = Object.keys(mayImport).flatMap((part) =>
      sourcesOf(part).flatMap((file) =>
        importsOf(readProjectFile(file))
          .filter((target) => climbsOutOf(part, file, target))
          .filter((target) => !(/\.test\.[a-z]+$/.test(file) && /tests\/|prisma\//.test(target)))
          .filter((target) => !(file.startsWith('apps/api/src/demo') && /prisma\/demo/.test(target)))
          .map((target) => `${file} → ${target}`),
      ),
    )
    expect(wrong).toEqual([])
  })

  test('a wrong import is found by the rule', () => {
    expect(importsOf("import { app } from '@espalier/api/app'")).toEqual(['@espalier/api/app'])
    expect(climbsOutOf('apps/web', 'apps/web/src/a.ts', '../../api/src/app')).toBe(true)
    expect(climbsOutOf('apps/web', 'apps/web/src/a.ts', './b')).toBe(false)
  })
})

/** Fixtures, oracles and makers of random cases serve tests only, and may ask what the domain may not. */
function isTestSupport(file: string): boolean {
  return /\.(test|fixture)\.ts$|-arbitrary\.ts$|\/(fixtures|oracle)\//.test(file)
}

describe('the domain is pure', () => {
  const impure = /\bDate\b|\bIntl\b|localeCompare|Math\.random|\bprocess\.|\bfetch\(|\bsetTimeout\b|\bcrypto\b/
  const sources = sourcesOf('packages/domain').filter((file) => !isTestSupport(file))

  test('it has no clock, randomness, locale, network or process', () => {
    const found = sources.flatMap((file) =>
      readProjectFile(file)
        .split('\n')
        .filter(
          (text) =>
            !/^\s*(\/\/|\/?\*)/.test(text) &&
            impure.test(text.replace(/LocalDate|localDate|DateId|dateId|KitDate/g, '')),
        )
        .map((text) => `${file}: ${text.trim()}`),
    )
    expect(found).toEqual([])
  })

  test('it imports no package but its own small maths', () => {
    const allowed = /^(\.|node:)/
    const found = sources.flatMap((file) =>
      importsOf(readProjectFile(file))
        .filter((target) => !allowed.test(target) || target.startsWith('node:'))
        .map((target) => `${file} → ${target}`),
    )
    expect(found).toEqual([])
  })
})

import { existsSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { readProjectFile, root } from './project-files'

const pages = ['README.md', 'DEVELOPERS.md'] as const

function listPathsNamedIn(page: string): readonly string[] {
  const quoted = [...readProjectFile(page).matchAll(/`([A-Za-z0-9_.()[\]/-]+)`/g)].map((match) => match[1] ?? '')
  const linked = [...readProjectFile(page).matchAll(/\]\(([^)#]+)\)/g)].map((match) => match[1] ?? '')
  const isPath = (text: string) =>
    /^(apps|packages|prisma|tests|docs|\.ci)\//.test(text) || /^[A-Za-z-]+\.(md|json|yml|mjs)$/.test(text)
  return [...quoted, ...linked].filter((text) => isPath(text) && !/[…*<>]/.test(text))
}

describe('documents stay true', () => {
  test.each(pages)('every path named in %s exists', (page) => {
    const named = listPathsNamedIn(page)
    expect(named.length).toBeGreaterThan(5)
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([])
  })

  test('every script named in the README is in package.json', () => {
    const scripts = Object.keys(JSON.parse(readProjectFile('package.json')).scripts)
    const named = [...readProjectFile('README.md').matchAll(/npm (?:run )?([a-z:]+)/g)].map((match) => match[1] ?? '')
    const builtIn = ['install', 'ci', 'only']
    expect(named.length).toBeGreaterThan(2)
    expect(named.filter((name) => !scripts.includes(name) && !builtIn.includes(name))).toEqual([])
  })
})

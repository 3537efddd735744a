import { describe, expect, test } from 'vitest'
import { isText, listProjectFiles, readProjectFile } from './project-files'

// Assembled from pieces, so that this file does not find itself.
const forbidden = [
  ['a path of one machine', new RegExp(['/wo', 'rk/'].join(''))],
  ['the pages beside the project', new RegExp(['\\.\\./', 'shared/'].join(''))],
  ['a package registry', new RegExp(['npm', 'js\\.(org|com)|deb\\.deb', 'ian'].join(''))],
  [
    'a marker of unfinished work',
    new RegExp(['\\bTO', 'DO\\b|\\bFIX', 'ME\\b|\\bXX', 'X\\b|not imple', 'mented'].join('')),
  ],
] as const

const texts = listProjectFiles().filter((file) => isText(file) && !/licen[cs]e/i.test(file))

describe('words that no committed file may hold', () => {
  test('there are texts to look at', () => {
    expect(texts.length).toBeGreaterThan(50)
  })

  test.each(forbidden)('%s', (_, pattern) => {
    expect(texts.filter((file) => pattern.test(readProjectFile(file)))).toEqual([])
  })

  test('the lockfile holds no download address', () => {
    const resolved = readProjectFile('package-lock.json').match(/"resolved": "(?!apps\/|packages\/)[^"]*"/g)
    expect(resolved).toBeNull()
  })
})

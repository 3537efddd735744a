import { describe, expect, test } from 'vitest'
import { isSource, listProjectFiles, readProjectFile } from './project-files'

const sources = listProjectFiles().filter(isSource)
const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9-]+)*$/
// Names that Next, the tools or their conventions demand.
const demandedNames = /(\[\.{0,3}[a-zA-Z]+\]|\([a-z-]+\)|_[a-z]+)/
const vagueNames = /^(utils?|helpers?|common|managers?|data|misc|shared)\b/

describe('files', () => {
  test('there are sources to look at', () => {
    expect(sources.length).toBeGreaterThan(50)
  })

  test('no hand-written source is longer than 400 lines', () => {
    const long = sources
      .map((file) => ({ file, lines: readProjectFile(file).split('\n').length }))
      .filter((row) => row.lines > 400)
    expect(long).toEqual([])
  })

  test('every folder and file is named in kebab-case', () => {
    const odd = sources.filter((file) =>
      file.split('/').some((part) => !kebab.test(part.replace(/^\./, '')) && !demandedNames.test(part)),
    )
    expect(odd).toEqual([])
  })

  test('no file or folder hides behind a vague name', () => {
    const vague = sources.filter((file) =>
      file.split('/').some((part) => vagueNames.test(part.replace(/\.[^.]+$/, ''))),
    )
    expect(vague).toEqual([])
  })

  test('no test is skipped, narrowed or empty of meaning', () => {
    const forbidden = /\b(?:it|test|describe)\.(?:skip|only|todo|fails)\b|expect\(true\)\.toBe\(true\)/
    const found = sources
      .filter((file) => /\.test\.[cm]?[jt]sx?$/.test(file) && file !== 'tests/repo/file-rules.test.ts')
      .filter((file) => forbidden.test(readProjectFile(file)))
    expect(found).toEqual([])
  })
})

import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { fillIn, speakerOf } from './message'

const folder = join(import.meta.dirname, 'en')
const areas = readdirSync(folder)

test('a sentence is filled with its values', () => {
  expect(fillIn('{here} of {all} came', { here: 8, all: 10 })).toBe('8 of 10 came')
})

test('a value that is missing is a bug that names itself', () => {
  expect(() => fillIn('{here} of {all} came', { here: 8 })).toThrow('{all}')
})

test('a value is text, never a placeholder again', () => {
  expect(fillIn('{name}', { name: '{other}' })).toBe('{other}')
})

test('a speaker knows only its own keys', () => {
  const say = speakerOf({ press: 'Sign in' })
  expect(say('press')).toBe('Sign in')
  // @ts-expect-error an unknown key must not compile
  expect(() => say('pres')).toThrow()
})

test('there are areas to check', () => {
  expect(areas.length).toBeGreaterThanOrEqual(13)
})

test.each(areas)(
  '%s holds only one-line sentences with well-formed placeholders, and a speaker stands beside it',
  (area) => {
    const texts = JSON.parse(readFileSync(join(folder, area), 'utf8')) as Record<string, unknown>
    for (const [key, text] of Object.entries(texts)) {
      expect(key).toMatch(/^[a-z][A-Za-z0-9.-]*$/)
      expect(text, key).toMatch(/^(?:[^{}\n]|\{[a-zA-Z]+\})+$/)
    }
    expect(readFileSync(join(folder, '..', area.replace('.json', '.ts')), 'utf8')).toContain(`./en/${area}`)
  },
)

import { createHash } from 'node:crypto'
import { expect, test } from 'vitest'
import { inlineScriptHashes } from '../build/field-hashes.mjs'
import { fieldPolicy, onlinePolicy } from './security-headers'

const directives = (policy: string) => new Map(policy.split('; ').map((part) => [part.split(' ')[0], part]))

test('a page made per answer runs only scripts with its nonce', () => {
  const policy = directives(onlinePolicy('bm9uY2U=', false))
  expect(policy.get('script-src')).toBe("script-src 'nonce-bm9uY2U=' 'strict-dynamic'")
  expect(policy.get('style-src')).toBe("style-src 'self' 'nonce-bm9uY2U='")
})

test('a field page runs only its own files and the scripts known by hash', () => {
  expect(directives(fieldPolicy(['sha256-abc='])).get('script-src')).toBe("script-src 'self' 'sha256-abc='")
})

test.each([
  ['online', onlinePolicy('x', false)],
  ['field', fieldPolicy(['sha256-abc='])],
])('the %s policy starts from nothing and never allows inline or evaluated code', (_, policy) => {
  expect(policy).toContain("default-src 'none'")
  expect(policy).toContain("frame-ancestors 'none'")
  expect(policy).toContain("base-uri 'none'")
  expect(policy).not.toMatch(/unsafe-(inline|eval)/)
})

test('a development server may evaluate, a built one may not', () => {
  expect(onlinePolicy('x', true)).toContain("'unsafe-eval'")
})

test('every inline script is hashed over exactly its text; files and repeats are left out', () => {
  const html =
    '<script src="/a.js"></script><script>go("é")</script><script id="x">go("é")</script><script>\nb()</script>'
  const hash = (text: string) => `sha256-${createHash('sha256').update(text).digest('base64')}`
  expect(inlineScriptHashes(html)).toEqual([hash('go("é")'), hash('\nb()')])
})

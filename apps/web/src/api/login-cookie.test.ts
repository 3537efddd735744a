import { expect, test } from 'vitest'
import { LOGIN_COOKIE, loginCookieHeader } from './login-cookie'

const token = `${'A'.repeat(41)}_-`

test('a login is passed on as it came', () => {
  expect(loginCookieHeader(token)).toBe(`${LOGIN_COOKIE}=${token}`)
})

test.each([
  ['none', undefined],
  ['an empty one', ''],
  ['one cut short', token.slice(1)],
  ['a longer one', `${token}A`],
  ['one that a header cannot hold', `${token.slice(1)}\u2028`],
  ['a line break at its end', `${token}\n`],
  ['a second cookie', `${token.slice(0, 39)}; a=`],
])('of %s nothing is sent', (_, value) => {
  expect(loginCookieHeader(value)).toBeNull()
})

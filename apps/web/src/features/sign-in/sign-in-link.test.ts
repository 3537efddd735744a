import { expect, test } from 'vitest'
import { newSecret, newUuid } from '../../api/identifiers'
import { signInLinkFrom } from './sign-in-link'

const clubId = newUuid()
const token = newSecret()

test('a whole link gives its club and its token', () => {
  expect(signInLinkFrom(`#${clubId}.${token}`)).toEqual({ clubId, token })
})

test.each([
  ['nothing', ''],
  ['a club alone', `#${clubId}`],
  ['a token cut short', `#${clubId}.${token.slice(0, 40)}`],
  ['something after the token', `#${clubId}.${token}.x`],
  ['a club that is no UUID', `#club.${token}`],
])('%s is no link', (_, fragment) => {
  expect(signInLinkFrom(fragment)).toBeNull()
})

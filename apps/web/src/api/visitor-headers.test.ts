import { expect, test } from 'vitest'
import { visitorHeaders } from './visitor-headers'

const asked = new Headers({ 'x-espalier-visitor': '192.0.2.7', 'x-espalier-web-key': 'sent-by-a-visitor' })

test("the visitor's address goes on together with our own key, never with one that was sent", () => {
  expect(visitorHeaders(asked, 'our-own-key')).toEqual({
    'x-espalier-visitor': '192.0.2.7',
    'x-espalier-web-key': 'our-own-key',
  })
})

test('without a key of ours, or without an address, nothing goes on', () => {
  expect([undefined, ''].map((key) => visitorHeaders(asked, key))).toEqual([{}, {}])
  expect(visitorHeaders(new Headers(), 'our-own-key')).toEqual({})
})

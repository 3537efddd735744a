import { expect, test } from 'vitest'
import { FIELD_VIEWS, fieldHref, readFieldAddress } from './field-address'

test('every view survives being written into an address and read again', () => {
  for (const view of FIELD_VIEWS) {
    for (const dateId of [null, 'd1']) {
      const address = { clubId: 'c1', teamId: 't1', view, dateId }
      expect(readFieldAddress(new URL(fieldHref(address), 'https://club.example').search)).toEqual(address)
    }
  }
})

test('an unknown view is tonight', () => {
  expect(readFieldAddress('?club=c1&team=t1&view=board')?.view).toBe('tonight')
})

test.each(['', '?club=c1', '?team=t1', '?club=&team=t1'])('"%s" names no team', (search) => {
  expect(readFieldAddress(search)).toBeNull()
})

import type { ProfileField } from '@espalier/domain/check'
import { expect, test } from 'vitest'
import { readOwnValues } from './own-values'

const filled = (texts: Partial<Record<ProfileField, string>>) => readOwnValues('U10', (field) => texts[field] ?? '')

test('what is empty or as printed is the printed value; the rest is kept in thousandths', () => {
  expect(filled({ topSpeed: '5.4', reach: '0,7', reaction: '0.3125' })).toEqual({
    ok: true,
    own: { reach: 700, reaction: 313 },
  })
  expect(filled({})).toEqual({ ok: true, own: {} })
})

test('every value that cannot be is said at its own field', () => {
  const reading = filled({ topSpeed: '19.4', reach: 'long', oneTouch: '0' })
  expect(reading).toEqual({
    ok: false,
    wrong: {
      topSpeed: 'From 2 to 11. Outside that a number is a slip of the pen, such as kilometres an hour.',
      reach: 'Write a number, or leave it empty for the printed one.',
      oneTouch: 'From 0.05 to 2. Outside that a number is a slip of the pen, such as kilometres an hour.',
    },
  })
})

test('values that do not go together are said in the words of the page', () => {
  expect(filled({ carrySpeed: '6' })).toEqual({ ok: false, wrong: { carrySpeed: 'Cannot be above “Top speed”.' } })
  expect(filled({ carrySpeed: '6', topSpeed: '6.5' })).toEqual({ ok: true, own: { carrySpeed: 6000, topSpeed: 6500 } })
})

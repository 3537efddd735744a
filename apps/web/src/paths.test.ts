import { expect, test } from 'vitest'
import { pages, pageTo } from './paths'

test('an address is filled with its parameters, each escaped', () => {
  expect(pageTo(pages.squad, { clubId: 'c1', teamId: 'a/b' })).toBe('/clubs/c1/teams/a%2Fb/squad')
})

test('an address without parameters stays as it is and takes a query', () => {
  expect(pageTo(pages.field, {}, { team: 't 1', view: 'tonight' })).toBe('/field?team=t+1&view=tonight')
})

test('no two pages share an address', () => {
  const templates = Object.values(pages)
  expect(new Set(templates).size).toBe(templates.length)
})

// @ts-expect-error a missing parameter must not compile
export const wrong = () => pageTo(pages.squad, { clubId: 'c1' })

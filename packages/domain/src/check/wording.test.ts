import { expect, test } from 'vitest'
import { opponentAt, samplePattern, spotAt } from '../pattern/fixtures/sample-pattern'
import { metres, seconds } from '../quantities'
import { nameObstacle, sayMetres, saySeconds } from './wording'

test.each([
  [3, '3 m (4 paces)'],
  [0.72, '0.7 m (1 pace)'],
  [0.04, '0 m (1 pace)'],
  [12.96, '13 m (17 paces)'],
])('%d metres read as %s', (length, words) => {
  expect(sayMetres(metres(length))).toBe(words)
})

test('seconds read to a tenth', () => {
  expect(saySeconds(seconds(0.649))).toBe('0.6 s')
})

test('obstacles are counted among their kind, not named by their ids', () => {
  const [pole] = samplePattern.obstacles
  const one = opponentAt('q7', spotAt('centre-mark'))
  const two = opponentAt('a1', spotAt('penalty-mark'))
  const document = { ...samplePattern, obstacles: [one, pole!, two] }
  expect(document.obstacles.map((each) => nameObstacle(document, each))).toEqual(['opponent 1', 'pole', 'opponent 2'])
})

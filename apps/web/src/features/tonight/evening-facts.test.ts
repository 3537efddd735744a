import { expect, test } from 'vitest'
import { changeEvening, newEvening } from './evening'
import { eveningFacts, inputsText, USUAL_PACE_MM } from './evening-facts'
import { exampleKit } from './kit.fixture'

const [date] = exampleKit.dates
if (date === undefined) throw new Error('the example kit holds an evening')

function textWith(...guests: readonly string[]): string {
  const start = newEvening(exampleKit, date!)
  const evening = guests.reduce((before, initials) => changeEvening(before, { kind: 'add-guest', initials }), start)
  return inputsText(eveningFacts(exampleKit, date!, evening, USUAL_PACE_MM)!)
}

test('what is hashed holds how many guests came, and neither their initials nor a name of the squad', () => {
  expect(textWith('QXQX')).not.toContain('QXQX')
  expect(textWith('QXQX')).toBe(textWith('ZYZY'))
  expect(textWith('QXQX')).not.toBe(textWith('QXQX', 'ZYZY'))
  expect(textWith()).not.toBe(textWith('QXQX'))
  for (const { shortName } of exampleKit.squad) expect(textWith()).not.toContain(`"${shortName}"`)
})

import { describe, expect, test } from 'vitest'
import { readSquadRows } from './squad-rows'

const header = ['name', 'shirt', 'home', 'stretch', 'goalkeeper', 'foot']
const squad = [
  {
    playerId: '0192f000-0000-7000-8000-000000000001',
    shortName: 'Ada',
    shirt: 4,
    home: null,
    stretch: null,
    goalkeeper: 'no',
    foot: 'right',
    version: 1,
  },
] as const

function rowsOf(...body: string[][]) {
  const reading = readSquadRows([header, ...body], squad)
  if (!reading.ok) throw new Error(reading.code)
  return reading.rows
}

describe('a squad file', () => {
  test('keeps a good row whole', () => {
    const [row] = rowsOf(['Ben', '7', 'lcb', 'CM', 'yes', 'left'])
    expect(row).toEqual({
      line: 2,
      player: { shortName: 'Ben', shirt: 7, home: 'LCB', stretch: 'CM', goalkeeper: 'yes', foot: 'left' },
      faults: [],
    })
  })

  test('needs nothing but the name', () => {
    expect(rowsOf(['Cleo'])[0]).toEqual({
      line: 2,
      player: { shortName: 'Cleo', shirt: null, home: null, stretch: null, goalkeeper: 'sometimes', foot: 'right' },
      faults: [],
    })
  })

  test.each([
    [['', '7'], [{ code: 'missing-name' }]],
    [['A name that is far too long to be short'], [{ code: 'long-name' }]],
    [['ada'], [{ code: 'name-twice' }]],
    [['Dev', '0'], [{ code: 'bad-shirt', value: '0' }]],
    [['Dev', '100'], [{ code: 'bad-shirt', value: '100' }]],
    [['Dev', '4'], [{ code: 'shirt-twice', value: '4' }]],
    [['Dev', '', 'left back'], [{ code: 'bad-position', value: 'left back' }]],
    [['Dev', '', 'CM', 'CM'], [{ code: 'same-position' }]],
    [['Dev', '', '', '', 'maybe'], [{ code: 'bad-goalkeeper', value: 'maybe' }]],
    [['Dev', '', '', '', '', 'two'], [{ code: 'bad-foot', value: 'two' }]],
    [['Dev', '', '', '', '', '', 'more'], [{ code: 'too-many-cells' }]],
  ])('names what is wrong with %j', (cells, faults) => {
    expect(rowsOf(cells)[0]?.faults).toEqual(faults)
  })

  test('counts lines as the file does and passes over empty ones', () => {
    expect(rowsOf(['Ben'], ['', ''], ['Cleo']).map(({ line }) => line)).toEqual([2, 4])
  })

  test('a row that is left out takes nothing away from a later one', () => {
    const rows = rowsOf(['Eve', '9', '', '', 'maybe'], ['Eve', '9'])
    expect(rows.map(({ faults }) => faults.length)).toEqual([1, 0])
  })

  test('names the columns that are not kept', () => {
    const reading = readSquadRows(
      [
        ['Name', 'Birth date', 'Shirt'],
        ['Ben', '2016-01-01', '7'],
      ],
      [],
    )
    expect(reading).toMatchObject({ ok: true, ignoredColumns: ['birth date'] })
    expect(JSON.stringify(reading)).not.toContain('2016')
  })

  test('without a name column nothing is read', () => {
    expect(readSquadRows([['shirt'], ['7']], [])).toEqual({ ok: false, code: 'no-header' })
  })

  test('more than sixty rows are refused whole', () => {
    const many = Array.from({ length: 61 }, (_, index) => [`Child ${index}`])
    expect(readSquadRows([header, ...many], [])).toEqual({ ok: false, code: 'too-many' })
  })
})

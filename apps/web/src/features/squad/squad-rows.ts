import type { Player, PlayerBody } from '@espalier/contract/squads'

export type RowFault =
  | { readonly code: 'missing-name' | 'long-name' | 'name-twice' | 'same-position' | 'too-many-cells' }
  | {
      readonly code: 'bad-shirt' | 'shirt-twice' | 'bad-position' | 'bad-goalkeeper' | 'bad-foot'
      readonly value: string
    }

export type SquadRow = {
  /** Line of the file, the header being line 1. */
  readonly line: number
  readonly player: Omit<PlayerBody, 'id'>
  readonly faults: readonly RowFault[]
}

export type SquadReading =
  | { readonly ok: true; readonly rows: readonly SquadRow[]; readonly ignoredColumns: readonly string[] }
  | { readonly ok: false; readonly code: 'no-header' | 'too-many' }

const COLUMNS = ['name', 'shirt', 'home', 'stretch', 'goalkeeper', 'foot'] as const
type Column = (typeof COLUMNS)[number]

const MOST_ROWS = 60
const LONGEST_NAME = 24
const POSITION = /^[A-Z][A-Z0-9]{0,3}$/
const GOALKEEPER = ['yes', 'sometimes', 'no'] as const
const FOOT = ['left', 'right', 'both'] as const

/**
 * Reads the cells of a CSV file into children, each row with all that is wrong with it. Columns that Espalier keeps
 * nothing of are named and dropped here, before anything is sent.
 */
export function readSquadRows(table: readonly (readonly string[])[], squad: readonly Player[]): SquadReading {
  const [header, ...body] = table
  const titles = (header ?? []).map((title) => title.trim().toLowerCase())
  if (!titles.includes('name')) return { ok: false, code: 'no-header' }
  const lines = body.map((cells, index) => ({ cells, line: index + 2 })).filter(({ cells }) => cells.some(isFilled))
  if (lines.length > MOST_ROWS) return { ok: false, code: 'too-many' }

  const taken = {
    names: new Set(squad.flatMap(({ shortName }) => shortName?.toLowerCase() ?? [])),
    shirts: new Set(squad.flatMap(({ shirt }) => shirt ?? [])),
  }
  const rows = lines.map(({ cells, line }) => {
    const cellOf = (column: Column) => (cells[titles.indexOf(column)] ?? '').trim().replace(/\s+/g, ' ')
    const row = readRow(cellOf, taken)
    const extra = cells.slice(titles.length).some(isFilled) ? [{ code: 'too-many-cells' } as const] : []
    return { line, player: row.player, faults: [...extra, ...row.faults] }
  })
  return { ok: true, rows, ignoredColumns: titles.filter((title) => title !== '' && !isKept(title)) }
}

function isFilled(cell: string): boolean {
  return cell.trim() !== ''
}

function isKept(title: string): title is Column {
  return COLUMNS.some((column) => column === title)
}

type Taken = { readonly names: Set<string>; readonly shirts: Set<number> }

function readRow(cellOf: (column: Column) => string, taken: Taken): Omit<SquadRow, 'line'> {
  const faults: RowFault[] = []
  const shortName = cellOf('name')
  if (shortName === '') faults.push({ code: 'missing-name' })
  else if (shortName.length > LONGEST_NAME) faults.push({ code: 'long-name' })
  else if (taken.names.has(shortName.toLowerCase())) faults.push({ code: 'name-twice' })

  const shirtText = cellOf('shirt')
  const shirt = /^[1-9]\d?$/.test(shirtText) ? Number(shirtText) : null
  if (shirtText !== '' && shirt === null) faults.push({ code: 'bad-shirt', value: shirtText })
  if (shirt !== null && taken.shirts.has(shirt)) faults.push({ code: 'shirt-twice', value: shirtText })

  const [home, stretch] = (['home', 'stretch'] as const).map((column) => {
    const value = cellOf(column).toUpperCase()
    if (value !== '' && !POSITION.test(value)) faults.push({ code: 'bad-position', value: cellOf(column) })
    return POSITION.test(value) ? value : null
  })
  if (home !== null && home === stretch) faults.push({ code: 'same-position' })

  const goalkeeper = chosen(cellOf('goalkeeper'), GOALKEEPER, 'sometimes')
  if (goalkeeper === null) faults.push({ code: 'bad-goalkeeper', value: cellOf('goalkeeper') })
  const foot = chosen(cellOf('foot'), FOOT, 'right')
  if (foot === null) faults.push({ code: 'bad-foot', value: cellOf('foot') })

  // A row that is left out takes no name and no shirt away from a later one.
  if (faults.length === 0) {
    taken.names.add(shortName.toLowerCase())
    if (shirt !== null) taken.shirts.add(shirt)
  }
  const player = {
    shortName,
    shirt,
    home: home ?? null,
    stretch: stretch ?? null,
    goalkeeper: goalkeeper ?? 'sometimes',
    foot: foot ?? 'right',
  } as const
  return { player, faults }
}

/** One of the words, an empty cell's usual value, or null for any other text. */
function chosen<Word extends string>(text: string, words: readonly Word[], usual: Word): Word | null {
  if (text === '') return usual
  return words.find((word) => word === text.toLowerCase()) ?? null
}

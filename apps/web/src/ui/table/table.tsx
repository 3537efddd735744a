import type { ReactNode } from 'react'
import { classNames } from '../class-names'

export type Column<Row> = {
  readonly title: string
  readonly cell: (row: Row) => ReactNode
  /** The cell that names its row. */
  readonly namesRow?: boolean
  readonly align?: 'start' | 'end'
}

type TableProps<Row> = {
  readonly caption: string
  /** Hides the caption where a heading just above already says it; it is still read out. */
  readonly captionHidden?: boolean
  readonly columns: readonly Column<Row>[]
  readonly rows: readonly Row[]
  readonly rowKey: (row: Row) => string
}

/**
 * Rows on wires. On a phone each row becomes a short list with the column's word before each value; the roles are
 * written out because browsers forget that a table is one when its display changes.
 */
export function Table<Row>({ caption, captionHidden = false, columns, rows, rowKey }: TableProps<Row>) {
  return (
    // biome-ignore lint/a11y/noRedundantRoles: see above
    <table role="table" className="w-full border-collapse text-left max-desk:block">
      <caption className={captionHidden ? 'sr-only' : 'pb-2 text-left font-semibold max-desk:block'}>{caption}</caption>
      {/* biome-ignore lint/a11y/noRedundantRoles: see above */}
      <thead role="rowgroup" className="max-desk:sr-only">
        {/* biome-ignore lint/a11y/noRedundantRoles: see above */}
        <tr role="row" className="border-b border-ink">
          {columns.map((column) => (
            // biome-ignore lint/a11y/noRedundantRoles: see above
            <th key={column.title} role="columnheader" scope="col" className={headClasses(column)}>
              {column.title}
            </th>
          ))}
        </tr>
      </thead>
      {/* biome-ignore lint/a11y/noRedundantRoles: see above */}
      <tbody role="rowgroup" className="max-desk:block">
        {rows.map((row) => (
          // biome-ignore lint/a11y/noRedundantRoles: see above
          <tr key={rowKey(row)} role="row" className="border-b border-wire max-desk:block max-desk:py-2">
            {columns.map((column) => (
              <Cell key={column.title} column={column} row={row} />
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  )
}

function headClasses<Row>(column: Column<Row>): string {
  return classNames('py-2 pr-4 text-small font-semibold', column.align === 'end' && 'text-right')
}

function Cell<Row>({ column, row }: { readonly column: Column<Row>; readonly row: Row }) {
  const classes = classNames(
    'py-2 pr-4 align-baseline max-desk:flex max-desk:gap-3 max-desk:py-1 max-desk:text-left',
    column.align === 'end' && 'text-right tabular-nums',
    column.namesRow === true && 'font-semibold',
  )
  const content = (
    <>
      {column.namesRow !== true && (
        <span aria-hidden="true" className="w-28 shrink-0 text-small text-ink-soft desk:hidden">
          {column.title}
        </span>
      )}
      <span className="min-w-0">{column.cell(row)}</span>
    </>
  )
  return column.namesRow === true ? (
    // biome-ignore lint/a11y/noRedundantRoles: see Table
    <th role="rowheader" scope="row" className={classes}>
      {content}
    </th>
  ) : (
    // biome-ignore lint/a11y/noRedundantRoles: see Table
    <td role="cell" className={classes}>
      {content}
    </td>
  )
}

import { squadMessage } from '../../messages/squad'
import { Table } from '../../ui/table/table'
import { rowFaultWords } from './row-fault-words'
import type { SquadReading } from './squad-rows'

/** What a file would add, and every row that it cannot add with the reason; nothing is lost silently. */
export function SquadPreview({ reading }: { readonly reading: SquadReading }) {
  if (!reading.ok) {
    return (
      <p role="alert" className="font-semibold">
        {squadMessage(reading.code === 'no-header' ? 'noHeader' : 'tooMany')}
      </p>
    )
  }
  const good = reading.rows.filter((row) => row.faults.length === 0)
  const bad = reading.rows.filter((row) => row.faults.length > 0)
  return (
    <div className="flex flex-col gap-4">
      {bad.length > 0 && (
        <div role="alert" className="border-l-[7px] border-double border-ink pl-3">
          <p className="font-semibold">{squadMessage('badRows', { count: bad.length })}</p>
          <ul>
            {bad.map((row) => (
              <li key={row.line}>
                {squadMessage('badRow', { line: row.line, reasons: row.faults.map(rowFaultWords).join('; ') })}
              </li>
            ))}
          </ul>
        </div>
      )}
      {reading.ignoredColumns.length > 0 && (
        <p>{squadMessage('ignored', { columns: reading.ignoredColumns.join(', ') })}</p>
      )}
      <p className="font-semibold">
        {good.length === 0 ? squadMessage('noRows') : squadMessage('goodRows', { count: good.length })}
      </p>
      {good.length > 0 && (
        <Table
          caption={squadMessage('previewCaption')}
          captionHidden
          rows={good}
          rowKey={(row) => String(row.line)}
          columns={[
            { title: squadMessage('shortName'), namesRow: true, cell: (row) => row.player.shortName },
            { title: squadMessage('shirt'), align: 'end', cell: (row) => row.player.shirt ?? squadMessage('none') },
            { title: squadMessage('home'), cell: (row) => row.player.home ?? squadMessage('none') },
            { title: squadMessage('stretch'), cell: (row) => row.player.stretch ?? squadMessage('none') },
            { title: squadMessage('goalkeeper'), cell: (row) => squadMessage(row.player.goalkeeper) },
            { title: squadMessage('foot'), cell: (row) => squadMessage(row.player.foot) },
          ]}
        />
      )}
    </div>
  )
}

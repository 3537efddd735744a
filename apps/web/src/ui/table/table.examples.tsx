import type { Examples } from '../example'
import { Table } from './table'

const rows = [
  { id: '1', name: 'U10 Larks', format: '7 v 7', children: 12 },
  { id: '2', name: 'U12 Kites', format: '9 v 9', children: 15 },
]

export const tableExamples = {
  teams: (
    <Table
      caption="Teams"
      rows={rows}
      rowKey={(row) => row.id}
      columns={[
        { title: 'Team', cell: (row) => row.name, namesRow: true },
        { title: 'Format', cell: (row) => row.format },
        { title: 'Children', cell: (row) => row.children, align: 'end' },
      ]}
    />
  ),
} satisfies Examples

// Stands in for the API and for the pages while the launcher itself is tested: answers, and keeps rows in the database.
import { createServer } from 'node:http'
import pg from 'pg'

const isApi = process.argv[2] === 'api'
const port = isApi ? Number(process.env.PORT) : Number(process.argv[3])
const pool = isApi ? new pg.Pool({ connectionString: process.env.ESPALIER_APP_DATABASE_URL, max: 2 }) : null

const CLUB = '01900000-0000-7000-8000-0000000000aa'

async function inClub(text, values = []) {
  const client = await pool.connect()
  try {
    await client.query(`begin; set local app.club_id = '${CLUB}'`)
    const { rows } = await client.query(text, values)
    await client.query('commit')
    return rows
  } finally {
    client.release()
  }
}

const answers = {
  '/add': async () => {
    await inClub(
      `insert into club (club_id, name, zone, settings) values ($1, 'Kept', 'UTC', '{}') on conflict do nothing`,
      [CLUB],
    )
    return inClub(
      `insert into season (club_id, season_id, name, first_day, last_day)
         select $1, gen_random_uuid(), 'Season ' || count(*), '2026-01-01', '2026-02-01' from season returning name`,
      [CLUB],
    )
  },
  '/count': () => inClub('select count(*)::int as count from season'),
}

const server = createServer(async (request, response) => {
  try {
    response.end(JSON.stringify(await (answers[request.url]?.() ?? 'fine')))
  } catch (error) {
    response.writeHead(500).end(error.message)
  }
})
server.listen(port, '127.0.0.1')
process.on('SIGTERM', () => {
  server.closeAllConnections()
  server.close(() => process.exit(0))
})

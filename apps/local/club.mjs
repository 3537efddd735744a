// npm run club -- new --name "…": makes a club and prints its administrator's link, beside a running Espalier or alone.
import { dirname, join, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { ensureInstalled, refuseOldNode } from './install.mjs'
import { readArguments } from './read-arguments.mjs'

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))))

try {
  refuseOldNode(process.versions.node)
  await ensureInstalled(root)
  const { ensureBuilt } = await import('./build.mjs')
  await ensureBuilt(root, ['client', 'api'])
  await runClubCommand(process.argv.slice(2))
} catch (error) {
  console.error(`\n${error.message}`)
  process.exitCode = 1
}

async function runClubCommand(args) {
  const { databaseEnvironment, migrateDatabase, openDatabase } = await import('./database.mjs')
  const { runProgram } = await import('./programs.mjs')
  const { readNote } = await import('./running.mjs')
  const wish = readArguments([], process.env)
  const folder = resolve(wish.folder ?? join(root, '.data'))
  const database = await openDatabase({ folder, databaseUrl: wish.databaseUrl })
  try {
    await migrateDatabase(root, database)
    const address = (database.reused && readNote(folder)?.address) || `http://127.0.0.1:${wish.port}`
    const env = databaseEnvironment(database, address)
    const entry = join(root, 'apps/api/dist/club.js')
    console.log((await runProgram({ name: 'Making the club', entry, args, cwd: root, env })).trim())
    if (!database.reused) console.log('Start Espalier with npm start, then open the link.')
  } finally {
    if (!database.reused) await database.stop()
  }
}

import { parseArgs } from 'node:util'
import { isZone } from './clock/local-dates'
import { readDatabaseConfig } from './config'
import { closePools } from './db/pool'
import type { Deps } from './deps'
import { createClub } from './features/clubs/create-club'
import { makeOperatorLink } from './features/clubs/make-operator-link'
import { makeSignInSecret, signInAddress } from './features/clubs/sign-in-address'
import { startDeps } from './start-deps'

// npm run club: an empty club with its first administrator, or a new way in for somebody who has none left.

const USAGE = `  club new --name "Your club" --zone Europe/London --person "Your name"
  club link --club <id of the club> --person <id of the person>`

const { positionals, values } = parseArgs({
  allowPositionals: true,
  options: { name: { type: 'string' }, zone: { type: 'string' }, person: { type: 'string' }, club: { type: 'string' } },
})

// Above the run, because whatever stands below it is not there yet when it is used.
const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/

const config = readDatabaseConfig(process.env)
const deps = await startDeps(config)
try {
  const lines = await runClubCommand(deps, config.origin)
  console.log(lines.join('\n'))
} catch (error) {
  console.error((error as Error).message)
  process.exitCode = 1
} finally {
  await closePools(deps.pools)
}

function runClubCommand(withDeps: Deps, origin: string): Promise<readonly string[]> {
  switch (positionals[0]) {
    case 'new':
      return makeNewClub(withDeps, origin)
    case 'link':
      return makeLink(withDeps, origin)
    default:
      throw new Error(`Say what to make:\n${USAGE}`)
  }
}

async function makeNewClub(withDeps: Deps, origin: string): Promise<readonly string[]> {
  const name = wordsOf('name', 80)
  const zone = values.zone ?? 'UTC'
  if (!isZone(zone)) throw new Error(`--zone ${zone} is no time zone that this program knows, such as Europe/London.`)
  const administratorName = values.person === undefined ? 'Administrator' : wordsOf('person', 60)
  const clubId = withDeps.newId()
  const secret = makeSignInSecret()
  await createClub(withDeps, { clubId, name, zone, demo: false, administratorName, linkTokenHash: secret.hash })
  return [
    `${name} is made (${clubId}), and nothing is in it yet.`,
    `${administratorName} signs in once, within seven days, at:`,
    signInAddress(origin, clubId, secret.token),
  ]
}

async function makeLink(withDeps: Deps, origin: string): Promise<readonly string[]> {
  const { club, person } = values
  if (club === undefined || person === undefined) throw new Error(`Say whose link:\n${USAGE}`)
  if (![club, person].every((id) => UUID.test(id))) throw new Error('Both ids are UUIDs in lower case.')
  const secret = makeSignInSecret()
  const made = await makeOperatorLink(withDeps, { clubId: club, memberId: person, tokenHash: secret.hash })
  if (!made.ok) throw new Error('There is no such person in such a club.')
  return ['Signs in once, within seven days, at:', signInAddress(origin, club, secret.token)]
}

/** One line of text as the contract takes it from pages. */
function wordsOf(option: 'name' | 'person', longest: number): string {
  const text = values[option]?.trim() ?? ''
  if (text === '' || text.length > longest || /\p{Cc}/u.test(text))
    throw new Error(`--${option} must be one line of at most ${longest} characters.\n${USAGE}`)
  return text
}

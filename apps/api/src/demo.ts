import { buildApp } from './app'
import { readDatabaseConfig } from './config'
import { closePools } from './db/pool'
import { DEMO_CLUB_ID, demoId } from './demo/ids'
import { ADMINISTRATOR, CLUB_NAME, type InventedPerson, PEOPLE, TEAMS } from './demo/invented'
import { makeDemoClub } from './demo/make-demo-club'
import { makeOperatorLink } from './features/clubs/make-operator-link'
import { makeSignInSecret, signInAddress } from './features/clubs/sign-in-address'
import { startDeps } from './start-deps'

// The invented club: made at the first start, found again at the others. Each start prints fresh one-time links, and
// the unused ones of the start before stop working.

const UNLIMITED = { requests: Number.MAX_SAFE_INTEGER, windowSeconds: 60 }

const clock = { now: Date.now() }
const config = readDatabaseConfig(process.env)
const deps = await startDeps(config, {
  now: () => clock.now,
  logLevel: 'silent',
  limits: {
    anonymous: UNLIMITED,
    login: UNLIMITED,
    operations: UNLIMITED,
    checks: UNLIMITED,
    pages: UNLIMITED,
    files: UNLIMITED,
  },
})
const app = await buildApp(deps)
try {
  await makeDemoClub({ app, deps, origin: config.origin }, clock)
  clock.now = Date.now()
  const lines = []
  for (const person of [ADMINISTRATOR, ...PEOPLE]) lines.push(await linkLine(person))
  const asJson = process.argv.includes('--json')
  console.log(asJson ? lines.map((line) => JSON.stringify(line)).join('\n') : describe(lines))
} finally {
  await app.close()
  await closePools(deps.pools)
}

type LinkLine = { readonly role: string; readonly name: string; readonly team: string | null; readonly link: string }

async function linkLine({ key, name, role, team }: InventedPerson): Promise<LinkLine> {
  const secret = makeSignInSecret()
  const made = await makeOperatorLink(deps, {
    clubId: DEMO_CLUB_ID,
    memberId: demoId('person', key),
    tokenHash: secret.hash,
  })
  if (!made.ok) throw new Error(`the demo club has lost ${name}`)
  const teamName = TEAMS.find((one) => one.key === team)?.name ?? null
  return { role, name, team: teamName, link: signInAddress(config.origin, DEMO_CLUB_ID, secret.token) }
}

function describe(all: readonly LinkLine[]): string {
  const words = all.map(({ role, name, team }) => `${role}${team === null ? '' : `, ${team}`} (${name})`)
  const width = Math.max(...words.map((text) => text.length))
  const rows = all.map(({ link }, at) => `  ${words[at]!.padEnd(width)}  ${link}`)
  return [`${CLUB_NAME} is an invented club. Each link signs in once:`, ...rows].join('\n')
}

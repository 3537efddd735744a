import { type ChildProcess, spawn } from 'node:child_process'
import { join } from 'node:path'
import { createInterface } from 'node:readline'
import { ORIGIN } from '../../factories/api'
import type { TestDatabase } from '../../support/database'

/** The API as it really runs: a process of its own that listens on a port. */
export type ServerProcess = {
  readonly origin: string
  readonly port: number
  /** Asks it to stop, as an operator or a supervisor does. */
  askToStop(): void
  /** Its exit code, or the signal that ended it, once it has ended. */
  readonly ended: Promise<number | NodeJS.Signals | null>
  /** Ends it whatever it does. */
  kill(): void
}

const main = join(import.meta.dirname, '../../../apps/api/src/main.ts')

/** From its source, or from a program that was built of it. */
export async function startServerProcess(
  database: TestDatabase,
  nameKey: Buffer,
  program: readonly string[] = ['--import', 'tsx', main],
): Promise<ServerProcess> {
  const child = spawn(process.execPath, program, {
    env: {
      PATH: process.env.PATH,
      ESPALIER_APP_DATABASE_URL: database.appUrl,
      ESPALIER_IDENTITY_DATABASE_URL: database.identityUrl,
      ESPALIER_KEK: nameKey.toString('base64url'),
      ESPALIER_ORIGIN: ORIGIN,
      // Nothing listens there, and no page is asked for.
      ESPALIER_WEB_ORIGIN: 'http://127.0.0.1:9',
      PORT: '0',
    },
    stdio: ['ignore', 'pipe', 'inherit'],
  })
  const ended = new Promise<number | NodeJS.Signals | null>((resolve) =>
    child.on('close', (code, signal) => resolve(code ?? signal)),
  )
  const port = await Promise.race([findPort(child), ended.then(() => null)])
  if (port === null) throw new Error('the server ended before it listened')
  return {
    origin: `http://127.0.0.1:${port}`,
    port,
    askToStop: () => void child.kill('SIGTERM'),
    ended,
    kill: () => void child.kill('SIGKILL'),
  }
}

/** The server chooses a free port and says so in its log. */
function findPort(child: ChildProcess): Promise<number> {
  return new Promise((resolve) => {
    createInterface({ input: child.stdout! }).on('line', (line) => {
      const found = /Server listening at http:\/\/127\.0\.0\.1:(\d+)/.exec(line)
      if (found) resolve(Number(found[1]))
    })
  })
}

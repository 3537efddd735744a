import { spawn } from 'node:child_process'
import { join } from 'node:path'
import pg from 'pg'
import { expect, test } from 'vitest'
import { startTestCluster } from '../support/database-cluster'

const fixture = join(import.meta.dirname, '../support/start-cluster.fixture.ts')

test('a test run that was killed leaves a server, and the next run ends it and works', async () => {
  const child = spawn(process.execPath, ['--import', 'tsx', fixture], { stdio: ['ignore', 'pipe', 'inherit'] })
  const ownerUrl = await new Promise<string>((resolve) => {
    child.stdout.on('data', (chunk) => {
      const found = /started (\S+)/.exec(String(chunk))
      if (found) resolve(found[1]!)
    })
  })
  const gone = new Promise((resolve) => child.on('close', resolve))
  child.kill('SIGKILL')
  await gone
  expect(await answers(ownerUrl)).toBe(true)

  const next = await startTestCluster()
  // Another run at the same time may be the one that ends it.
  await expect.poll(() => answers(ownerUrl), { timeout: 30_000 }).toBe(false)
  expect(await answers(next.cluster.ownerUrl)).toBe(true)
  await next.stop()
  expect(await answers(next.cluster.ownerUrl)).toBe(false)
}, 120_000)

async function answers(connectionString: string): Promise<boolean> {
  const client = new pg.Client({ connectionString })
  client.on('error', () => {})
  return client.connect().then(
    () => client.end().then(() => true),
    () => false,
  )
}

import { buildApp } from './app'
import { readServerConfig } from './config'
import { closePools } from './db/pool'
import { watchConnections } from './drain'
import { purgeDaily } from './purge'
import { startDeps } from './start-deps'

// Starts, drains, stops. What is under way when the stop is asked for is finished; what hangs is left after ten seconds.

const STOP_MILLISECONDS = 10_000
// By habit of the project: a request that is being sent when the stop is asked for has this long to arrive.
const ARRIVAL_MILLISECONDS = 1_000

const config = readServerConfig(process.env)
const deps = await startDeps(config, {
  webOrigin: config.webOrigin,
  trustedProxies: config.trustedProxies,
  webKey: config.webKey,
  checkThreads: config.checkThreads,
  logLevel: config.logLevel,
})
const app = await buildApp(deps)
const drain = watchConnections(app.server)

const stopPurging = purgeDaily(deps, () => app.log.warn('what is too old could not be purged'))

let stopping = false
async function stop(): Promise<void> {
  if (stopping) return
  stopping = true
  setTimeout(() => process.exit(1), STOP_MILLISECONDS).unref()
  stopPurging()
  drain.begin()
  setInterval(drain.hangUpOnTheRest, ARRIVAL_MILLISECONDS)
  await app.close()
  await deps.checks.close()
  await closePools(deps.pools)
  process.exit(0)
}
process.on('SIGTERM', () => void stop())
process.on('SIGINT', () => void stop())

await app.listen({ host: config.host, port: config.port })

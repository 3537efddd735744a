// Runs another program in this process and ends with the parent: when the parent is gone, however it went, the channel
// to it closes, and nothing is left holding the port.
import { pathToFileURL } from 'node:url'

const [, , entry, ...args] = process.argv
const LAST_MILLISECONDS = 5_000

process.on('disconnect', () => {
  setTimeout(() => process.exit(1), LAST_MILLISECONDS).unref()
  process.kill(process.pid, 'SIGTERM')
})

process.argv = [process.argv[0], entry, ...args]
await import(pathToFileURL(entry).href)

import { connect, createServer } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'

/** A port of 127.0.0.1 that nobody uses now. */
export function freePort() {
  return new Promise((resolve, reject) => {
    const server = createServer()
    server.on('error', reject)
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address()
      server.close(() => resolve(port))
    })
  })
}

/** Names a taken port and what to do. Programs of a killed parent get a moment to let go of it. */
export async function refuseTakenPort(port) {
  for (let attempt = 0; attempt < 12; attempt += 1) {
    const problem = await tryPort(port)
    if (problem === null) return
    if (problem === 'EACCES')
      throw new Error(`Port ${port} needs more rights. Choose one above 1023: PORT=4173 npm start`)
    await pause(500)
  }
  throw new Error(`Port ${port} is taken by another program. Choose another: PORT=${port + 1} npm start`)
}

async function tryPort(port) {
  // Some systems let a second listener in beside one on all addresses, so an answer counts as taken too.
  const answers = await new Promise((resolve) => {
    const socket = connect({ port, host: '127.0.0.1' })
    socket.on('connect', () => resolve(true))
    socket.on('error', () => resolve(false))
    socket.on('close', () => resolve(false))
    socket.on('connect', () => socket.destroy())
  })
  if (answers) return 'EADDRINUSE'
  return new Promise((resolve) => {
    const server = createServer()
    server.on('error', (error) => resolve(error.code ?? 'EADDRINUSE'))
    server.listen(port, '127.0.0.1', () => server.close(() => resolve(null)))
  })
}

import type { IncomingMessage, Server, ServerResponse } from 'node:http'
import type { Socket } from 'node:net'

/** Lets a server come to its end: whoever is being served is served to the end, and nobody else holds it up. */
export type Drain = {
  /** Every answer under way is the last one on its connection. */
  begin(): void
  /** Hangs up on whoever has not sent a whole request: browsers connect ahead of need, and slow ones may never finish. */
  hangUpOnTheRest(): void
}

type Exchange = { readonly request: IncomingMessage; readonly response: ServerResponse }

/** Watches a server's connections from before it listens. Node itself closes only those that were answered before. */
export function watchConnections(server: Server): Drain {
  const connections = new Map<Socket, Exchange | null>()
  server.on('connection', (socket: Socket) => {
    connections.set(socket, null)
    socket.on('close', () => connections.delete(socket))
  })
  server.on('request', (request: IncomingMessage, response: ServerResponse) => {
    const { socket } = request
    const exchange = { request, response }
    connections.set(socket, exchange)
    response.on('close', () => {
      if (connections.get(socket) === exchange) connections.set(socket, null)
    })
  })
  return {
    begin: () => {
      for (const exchange of connections.values()) {
        if (exchange !== null && !exchange.response.headersSent) exchange.response.setHeader('connection', 'close')
      }
    },
    hangUpOnTheRest: () => {
      for (const [socket, exchange] of connections) {
        if (exchange === null || !exchange.request.complete) socket.destroy()
      }
    },
  }
}

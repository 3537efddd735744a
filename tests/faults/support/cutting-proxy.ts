import { type AddressInfo, connect, createServer, type Server, type Socket } from 'node:net'

/** Where a connection is cut, once: at the n-th COMMIT, or at the n-th round trip of any kind, counted from now (1, 2, 3 …). */
export type Cut = {
  readonly at: 'commit' | 'round trip'
  readonly nth: number
  /** Before the request is passed on, or after the database has answered it and before the answer is passed back. */
  readonly side: 'before' | 'after'
}

/** Stands between a pool and PostgreSQL and passes everything on, until it is told to cut. */
export type CuttingProxy = {
  /** The same login and database, through the proxy. */
  readonly url: string
  /** Arms one cut; the connection that comes to this point first is cut there, towards both ends. */
  cutNext(cut: Cut): void
  /** Whether the armed cut is still to come; it is disarmed by asking. */
  disarm(): boolean
  /** Cuts everything, and nobody can connect. */
  goDown(): Promise<void>
  comeUp(): Promise<void>
  close(): Promise<void>
}

type State = { cut: Cut | null; seen: number; readonly sockets: Set<Socket> }

export async function startCuttingProxy(target: string): Promise<CuttingProxy> {
  const { hostname, port } = new URL(target)
  const state: State = { cut: null, seen: 0, sockets: new Set() }
  let server = await listen(0)
  const url = new URL(target)
  const ownPort = (server.address() as AddressInfo).port
  url.port = String(ownPort)

  function listen(at: number): Promise<Server> {
    const listening = createServer((client) => relay(state, client, connect(Number(port), hostname)))
    return new Promise((resolve) => listening.listen(at, '127.0.0.1', () => resolve(listening)))
  }

  function goDown(): Promise<void> {
    const closed = new Promise<void>((resolve) => server.close(() => resolve()))
    for (const socket of state.sockets) socket.destroy()
    return closed
  }

  return {
    url: url.href,
    cutNext: (cut) => {
      state.cut = cut
      state.seen = 0
    },
    disarm: () => {
      const isArmed = state.cut !== null
      state.cut = null
      return isArmed
    },
    goDown,
    comeUp: async () => {
      server = await listen(ownPort)
    },
    close: goDown,
  }
}

function relay(state: State, client: Socket, database: Socket): void {
  const ends = [client, database]
  const hangUp = () => {
    for (const end of ends) end.destroy()
  }
  let isCut = false
  for (const end of ends) {
    state.sockets.add(end)
    end.on('error', hangUp)
    end.on('close', () => {
      state.sockets.delete(end)
      hangUp()
    })
  }
  database.on('data', (answer) => {
    if (isCut) hangUp()
    else client.write(answer)
  })
  const messagesOf = makeMessageReader()
  client.on('data', (chunk: Buffer) => {
    for (const message of messagesOf(chunk)) {
      if (isCut) return
      const side = sideOfCut(state, message)
      if (side === 'before') return hangUp()
      if (side === 'after') isCut = true
      database.write(message)
    }
  })
}

/** Which side of this message the armed cut falls on; null where the message is not the one. */
function sideOfCut(state: State, message: Buffer): Cut['side'] | null {
  const { cut } = state
  if (cut === null || !(cut.at === 'commit' ? isCommit(message) : isRoundTrip(message))) return null
  state.seen += 1
  if (state.seen < cut.nth) return null
  state.cut = null
  return cut.side
}

// Source: PostgreSQL 18 documentation, 54.7 Message Formats. A client waits for an answer after Query (Q) and Sync (S).
const isRoundTrip = (message: Buffer) => message[0] === QUERY || message[0] === SYNC
const isCommit = (message: Buffer) => message[0] === QUERY && message.toString('latin1', 5) === 'commit\0'
const QUERY = 'Q'.charCodeAt(0)
const SYNC = 'S'.charCodeAt(0)
const LENGTH_BYTES = 4

/** Cuts a stream into whole messages: the first one is a length and its rest, each later one has its kind before it. */
function makeMessageReader(): (chunk: Buffer) => readonly Buffer[] {
  let rest: Buffer = Buffer.alloc(0)
  let kindBytes = 0
  return (chunk) => {
    rest = Buffer.concat([rest, chunk])
    const messages: Buffer[] = []
    while (rest.length >= kindBytes + LENGTH_BYTES) {
      const end = kindBytes + rest.readUInt32BE(kindBytes)
      if (rest.length < end) break
      messages.push(rest.subarray(0, end))
      rest = rest.subarray(end)
      kindBytes = 1
    }
    return messages
  }
}

import type { Socket } from 'node:net'
import { problems } from '@espalier/contract/problems'
import { PROBLEM_CONTENT_TYPE, problemBody } from './problems'
import { API_HEADERS } from './security-headers'

/** Long enough for the answer to arrive, by habit of the project; hanging up at once could overtake it. */
const LINGER_MILLISECONDS = 500

/** Answers what never became a request: malformed HTTP, headers too long, or too slow to arrive. */
export function makeClientErrorHandler(newId: () => string) {
  return (error: NodeJS.ErrnoException, socket: Socket): void => {
    if (error.code === 'ECONNRESET' || !socket.writable) {
      socket.destroy()
      return
    }
    const code = error.code === 'ERR_HTTP_REQUEST_TIMEOUT' ? 'too-slow' : 'bad-request'
    const body = JSON.stringify(problemBody({ code }, newId()))
    const headers = [
      `HTTP/1.1 ${problems[code].status} ${code === 'too-slow' ? 'Request Timeout' : 'Bad Request'}`,
      ...Object.entries(API_HEADERS).map(([name, value]) => `${name}: ${value}`),
      `content-type: ${PROBLEM_CONTENT_TYPE}`,
      `content-length: ${Buffer.byteLength(body)}`,
      'connection: close',
    ]
    socket.end(`${headers.join('\r\n')}\r\n\r\n${body}`)
    // Whoever never hangs up would keep the connection for ever.
    setTimeout(() => socket.destroy(), LINGER_MILLISECONDS).unref()
  }
}

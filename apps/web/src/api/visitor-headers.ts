const VISITOR = 'x-espalier-visitor'
const WEB_KEY = 'x-espalier-web-key'

/**
 * Who the API shall count a page's questions for: the front door named the visitor, and our key is why the API believes
 * it. Without a key nothing is sent, and the API counts all pages together.
 */
export function visitorHeaders(asked: Headers, webKey: string | undefined): Readonly<Record<string, string>> {
  const visitor = asked.get(VISITOR)
  if (visitor === null || webKey === undefined || webKey === '') return {}
  return { [VISITOR]: visitor, [WEB_KEY]: webKey }
}

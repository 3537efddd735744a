/** The body is not JSON that may be read: malformed, too deep, a name twice, or a name that would reach a prototype. */
export class JsonTextError extends Error {
  override readonly name = 'JsonTextError'
}

// Deeper than any document on the wire; a body of a thousand brackets ends here.
const DEPTH_MAX = 40
const FORBIDDEN_NAMES: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype'])

/**
 * Parses a body. JSON.parse keeps the last of two equal names without a word, so that what was checked by a proxy may
 * differ from what is read here: such a body is refused (RFC 8259, section 4, calls its meaning unpredictable).
 */
export function parseJsonText(text: string): unknown {
  let value: unknown
  try {
    value = JSON.parse(text)
  } catch {
    throw new JsonTextError('the body is not JSON')
  }
  refuseUnsafeNames(text)
  return value
}

type Level = { readonly names: Set<string> | null; expectsName: boolean }

/** Walks the text of a value that JSON.parse accepted, so only structure and names need care. */
function refuseUnsafeNames(text: string): void {
  const levels: Level[] = []
  for (let at = 0; at < text.length; at += 1) {
    const level = levels.at(-1)
    switch (text[at]) {
      case '{':
        levels.push({ names: new Set(), expectsName: true })
        break
      case '[':
        levels.push({ names: null, expectsName: false })
        break
      case '}':
      case ']':
        levels.pop()
        break
      case ',':
        if (level?.names) level.expectsName = true
        break
      case '"': {
        const end = endOfString(text, at)
        if (level?.names && level.expectsName) {
          addName(level.names, JSON.parse(text.slice(at, end + 1)) as string)
          level.expectsName = false
        }
        at = end
        break
      }
    }
    if (levels.length > DEPTH_MAX) throw new JsonTextError('the body is nested too deeply')
  }
}

function addName(names: Set<string>, name: string): void {
  if (names.has(name)) throw new JsonTextError('an object in the body has the same name twice')
  if (FORBIDDEN_NAMES.has(name)) throw new JsonTextError('the body uses a name that is not allowed')
  names.add(name)
}

function endOfString(text: string, start: number): number {
  let at = start + 1
  while (text[at] !== '"') at += text[at] === '\\' ? 2 : 1
  return at
}

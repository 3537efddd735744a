import { versionContent } from '@espalier/contract/curricula'
import type { VersionContent } from '@espalier/domain/curriculum'
import * as z from 'zod/mini'

const CONTENTS_MAX = 200
const contents = new Map<string, VersionContent>()

/**
 * The meaning of a frozen text, parsed once a process. It is found by its hash alone: equal hashes are equal texts, so
 * it does not matter which club asks.
 */
export function openContent(hashHex: string, text: string): VersionContent {
  const known = contents.get(hashHex)
  if (known !== undefined) return known
  const content = z.parse(versionContent, JSON.parse(text))
  const [oldest] = contents.keys()
  if (contents.size >= CONTENTS_MAX && oldest !== undefined) contents.delete(oldest)
  contents.set(hashHex, content)
  return content
}

/** A piece of a sentence: plain words, or a part of the document that a page may offer to change. */
export type ScriptPart = {
  readonly kind: ScriptPartKind
  readonly text: string
  /** JSON pointer (RFC 6901) into the document to what this part shows; null for plain words. */
  readonly pointer: string | null
  /** Detail is left out of the short sentence. */
  readonly detail: boolean
}

export const SCRIPT_PART_KINDS = [
  'words',
  'actor',
  'receiver',
  'runner',
  'into',
  'height',
  'place',
  'touches',
  'foot',
  'obstacle',
  'target',
  'sign',
  'number',
] as const
export type ScriptPartKind = (typeof SCRIPT_PART_KINDS)[number]

export type Slot = { readonly text: string; readonly pointer: string | null }
export type Slots = Readonly<Partial<Record<ScriptPartKind, Slot | null>>>

export type ScriptSentence = {
  readonly parts: readonly ScriptPart[]
  /** The short sentence, without detail. */
  readonly text: string
  /** With every detail, for the list that stands in for the drawing. */
  readonly fullText: string
}

const PIECE = /\[([^\]]*)\]|<([^>]*)>|\{([a-z]+)\}|([^[<{]+)/gu

/** Fills a template's {parts}. What stands in <angles> or [brackets] goes when a part in it is absent; [brackets] are detail. */
export function fillTemplate(template: string, slots: Slots): ScriptSentence {
  const parts = partsOf(template, slots, false)
  return {
    parts,
    text: joined(parts.filter((part) => !part.detail)),
    fullText: joined(parts),
  }
}

function partsOf(template: string, slots: Slots, detail: boolean): readonly ScriptPart[] {
  const parts: ScriptPart[] = []
  for (const [, bracket, angle, name, words] of template.matchAll(PIECE)) {
    if (bracket !== undefined) {
      if (isComplete(bracket, slots)) parts.push(...partsOf(bracket, slots, true))
    } else if (angle !== undefined) {
      if (isComplete(angle, slots)) parts.push(...partsOf(angle, slots, detail))
    } else if (name !== undefined) {
      const kind = SCRIPT_PART_KINDS.find((each) => each === name)
      const slot = kind === undefined ? undefined : slots[kind]
      if (kind !== undefined && slot) parts.push({ kind, ...slot, detail })
    } else if (words !== undefined) {
      parts.push({ kind: 'words', text: words, pointer: null, detail })
    }
  }
  return parts
}

function isComplete(bracket: string, slots: Slots): boolean {
  const names = [...bracket.matchAll(/\{([a-z]+)\}/gu)].map((match) => match[1])
  return names.every((name) => SCRIPT_PART_KINDS.some((kind) => kind === name && slots[kind]))
}

function joined(parts: readonly ScriptPart[]): string {
  return parts.map((part) => part.text).join('')
}

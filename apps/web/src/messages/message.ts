export type MessageValues = Readonly<Record<string, string | number>>

const PLACEHOLDER = /\{([a-zA-Z]+)\}/g

/**
 * Makes the speaker of one area: its keys are checked by the compiler, its placeholders when it speaks.
 * Areas are separate modules, so that a page ships only the words it says.
 */
export function speakerOf<Texts extends Readonly<Record<string, string>>>(texts: Texts) {
  return function say(key: keyof Texts & string, values: MessageValues = {}): string {
    return fillIn(texts[key] as string, values)
  }
}

/** Puts values into a sentence; a value that is missing is a bug and says which. */
export function fillIn(text: string, values: MessageValues): string {
  return text.replace(PLACEHOLDER, (_, name: string) => {
    const value = values[name]
    if (value === undefined) throw new Error(`the message "${text}" needs a value for {${name}}`)
    return String(value)
  })
}

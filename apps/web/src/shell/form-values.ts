/** What a person typed into one field, without the spaces at its ends that nobody sees. */
export function textOf(form: FormData, name: string): string {
  const value = form.get(name)
  return typeof value === 'string' ? value.trim() : ''
}

/** The value of a choice, or null for the empty one. */
export function choiceOf(form: FormData, name: string): string | null {
  const value = textOf(form, name)
  return value === '' ? null : value
}

export function isTicked(form: FormData, name: string): boolean {
  return form.has(name)
}

/** Joins class names, leaving out what does not apply. */
export function classNames(...names: readonly (string | false | null | undefined)[]): string {
  return names.filter((name) => typeof name === 'string' && name !== '').join(' ')
}

/** The first of s1, s2, s3 … that is not taken: ids inside a document are short and made by the page. */
export function freeId(letter: string, taken: readonly string[]): string {
  let number = 1
  while (taken.includes(`${letter}${number}`)) number += 1
  return `${letter}${number}`
}

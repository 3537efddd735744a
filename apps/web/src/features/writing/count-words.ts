/** Words of a short text, as the rules of the domain count them. */
export function countWords(text: string): number {
  return text.split(/\s+/u).filter((word) => word.length > 0).length
}

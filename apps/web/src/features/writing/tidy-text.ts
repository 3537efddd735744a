/** What stands between two words is one space, and nothing stands at the ends: as a text is saved. */
export function tidyText(text: string): string {
  return text.replace(/[\s\p{Cc}]+/gu, ' ').trim()
}

import type { PatternDocument } from './document'

/** Something a published pattern must say and this one does not yet. */
export type MissingTeaching = { readonly code: 'teaching-missing'; readonly pointer: string; readonly detail: string }

/** Two typical mistakes, each with what to change, stand on the coach's sheet. */
export const MISTAKES_MIN = 2

/** What keeps a pattern from being published: a coach must be able to teach it from the page alone. Lists of words may stay empty. */
export function missingTeaching(document: PatternDocument): readonly MissingTeaching[] {
  const { teaching } = document
  const texts: readonly (readonly [string, string, string])[] = [
    [document.title, '/title', 'a title'],
    [document.problem, '/problem', 'the problem it answers'],
    [teaching.why, '/teaching/why', 'why it is done'],
    [teaching.good, '/teaching/good', 'what good looks like'],
    [teaching.question, '/teaching/question', 'one question to ask'],
    [teaching.easier, '/teaching/easier', 'what makes it easier'],
    [teaching.harder, '/teaching/harder', 'what makes it harder'],
    [teaching.goLong, '/teaching/goLong', 'when it is time to go long'],
  ]
  const missing = texts.flatMap(([text, pointer, name]) => (isBlank(text) ? [lacks(pointer, name)] : []))
  if (document.steps.length === 0) missing.push(lacks('/steps', 'at least one step'))
  for (let index = 0; index < Math.max(MISTAKES_MIN, teaching.mistakes.length); index += 1) {
    const mistake = teaching.mistakes[index]
    if (mistake === undefined || isBlank(mistake.seen)) {
      missing.push(lacks(`/teaching/mistakes/${index}/seen`, `mistake ${index + 1}`))
    }
    if (mistake === undefined || isBlank(mistake.change)) {
      missing.push(lacks(`/teaching/mistakes/${index}/change`, `what to change about mistake ${index + 1}`))
    }
  }
  return missing
}

function isBlank(text: string): boolean {
  return text.trim().length === 0
}

function lacks(pointer: string, name: string): MissingTeaching {
  return { code: 'teaching-missing', pointer, detail: `${name} is missing` }
}

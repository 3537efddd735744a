import { formatOf } from '@espalier/domain/formats'
import { ENGLISH, type PatternDocument, sayPlace, scriptLooks, scriptSentences } from '@espalier/domain/pattern'
import { patternInWords } from '../../drawing/pattern-drawing'
import { patternsMessage } from '../../messages/patterns'

/** A whole pattern as lines of plain words, to lay two versions side by side. */
export function patternLines(document: PatternDocument): readonly string[] {
  const { teaching } = document
  const points = scriptSentences(document).flatMap(({ number, point }) =>
    point === '' ? [] : [`${patternsMessage('stepNumber', { number })}: ${point}`],
  )
  const targets = document.targets.map(({ targetId, kind, spot }) => `${kind} ${targetId}: ${sayPlace(spot)}`)
  const looks = scriptLooks(document).flatMap((look) => [
    look.sentence.text,
    ...look.answers.map(({ letter, sign, steps, onward }) =>
      [`${letter}:`, sign.text, ...steps.map((step) => step.fullText), onward.text].join(' '),
    ),
  ])
  const texts = (['why', 'good', 'question', 'easier', 'harder', 'goLong'] as const).flatMap((field) =>
    teaching[field] === '' ? [] : [`${patternsMessage(field)}: ${teaching[field]}`],
  )
  const mistakes = teaching.mistakes.map(({ seen, change }) => `${patternsMessage('mistake')}: ${seen} ${change}`)
  const words = teaching.callWords.length === 0 ? [] : [teaching.callWords.join(', ')]
  const frame = patternsMessage('frameSentence', {
    restart: ENGLISH.restarts[document.restart],
    format: formatOf(document.formatId).name,
    formation: document.formation,
    age: document.ageGroup,
    side: patternsMessage(document.writtenFor === 'left' ? 'sideLeft' : 'sideRight'),
  })
  const all = [document.title, document.problem, frame, ...patternInWords(document), ...points, ...targets]
  return [...all, ...looks, ...texts, ...mistakes, ...words].filter((line) => line !== '')
}

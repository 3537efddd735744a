import type { Format, FormatChoices, FormatId } from './format'
import { ifab11v11 } from './ifab-11v11'
import { buildOutCrossing7v7, penaltyMark7v7, us7v7 } from './us-7v7'
import { us9v9 } from './us-9v9'

export const formats: Readonly<Record<FormatId, Format>> = {
  'ifab-11v11': ifab11v11,
  'us-9v9': us9v9,
  'us-7v7': us7v7,
}

/** What a club's settings say where sources of the formats conflict. */
export function formatChoicesOf(settings: {
  readonly penaltyMarkYards7v7: 8 | 10
  readonly crossingAtRelease: 'when-released' | 'when-touched'
}): FormatChoices {
  return {
    penaltyMarkYards7v7: settings.penaltyMarkYards7v7,
    buildOutCrossing7v7: settings.crossingAtRelease === 'when-touched' ? 'touched' : 'released',
  }
}

/** A format with the club's choices in the places where sources conflict; without them, what is printed most often. */
export function formatOf(formatId: FormatId, choices?: FormatChoices): Format {
  const format = formats[formatId]
  if (formatId !== 'us-7v7' || choices === undefined) return format
  const crossing = choices.buildOutCrossing7v7
  return {
    ...format,
    penaltyMarkMm: penaltyMark7v7(choices),
    buildOutCrossing: crossing === undefined ? format.buildOutCrossing : buildOutCrossing7v7(crossing),
  }
}

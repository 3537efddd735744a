import { formatOf } from '@espalier/domain/formats'
import { ENGLISH, type PatternDocument } from '@espalier/domain/pattern'
import { patternsMessage } from '../../messages/patterns'

/** The problem it answers and the game it is played in. */
export function PatternFacts({ document }: { readonly document: PatternDocument }) {
  return (
    <div className="flex flex-col gap-1">
      {document.problem !== '' && <p className="voice-club text-script">{document.problem}</p>}
      <p className="text-small text-ink-soft">
        {patternsMessage('frameSentence', {
          restart: ENGLISH.restarts[document.restart],
          format: formatOf(document.formatId).name,
          formation: document.formation,
          age: document.ageGroup,
          side: patternsMessage(document.writtenFor === 'left' ? 'sideLeft' : 'sideRight'),
        })}
      </p>
    </div>
  )
}

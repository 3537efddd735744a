import type { Remedy, Severity } from '@espalier/domain/check'
import { patternsMessage } from '../../messages/patterns'
import { Button } from '../../ui/button/button'
import { Origin } from '../../ui/origin/origin'
import type { MarginNote } from './margin-notes'

const SEVERITY_WORDS = {
  'to-fix': 'severityToFix',
  'look-at': 'severityLookAt',
  note: 'severityNote',
} as const satisfies Record<Severity, string>

/** The rule beside a note says how grave it is, and so does its word: never a colour alone. */
const RULES = {
  'to-fix': 'border-l-[7px] border-double border-ink pl-2',
  'look-at': 'border-l-2 border-ink pl-3',
  note: 'border-l-2 border-dotted border-ink-soft pl-3',
} as const satisfies Record<Severity, string>

type NotesMarginProps = {
  readonly notes: readonly MarginNote[]
  readonly onMend?: ((remedy: Remedy) => void) | undefined
}

/** Notes beside the step they speak of. */
export function NotesMargin({ notes, onMend }: NotesMarginProps) {
  if (notes.length === 0) return null
  return (
    <ul className="flex flex-col gap-3">
      {notes.map((note) => (
        <li key={note.letter} className={`text-small ${RULES[note.severity]}`}>
          <p className="flex items-baseline gap-2">
            <span className="voice-club text-body font-semibold italic">{note.letter}</span>
            <span className={note.severity === 'to-fix' ? 'font-semibold' : 'text-ink-soft'}>
              {patternsMessage(SEVERITY_WORDS[note.severity])}
            </span>
          </p>
          <p>{note.sentence}</p>
          <div className="flex flex-wrap items-baseline gap-x-2 text-ink-soft">
            {note.measured !== null && <span>{note.measured}</span>}
            <Origin word={note.origin.word}>{note.origin.source}</Origin>
          </div>
          {note.remedy !== null && onMend !== undefined && <RemedyPress remedy={note.remedy} onMend={onMend} />}
        </li>
      ))}
    </ul>
  )
}

function RemedyPress({ remedy, onMend }: { readonly remedy: Remedy; readonly onMend: (remedy: Remedy) => void }) {
  return (
    <Button onClick={() => onMend(remedy)} className="mt-1">
      {remedy.sentence.replace(/\.$/, '')}
    </Button>
  )
}

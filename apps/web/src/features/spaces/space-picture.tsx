import { checkSpace, type Space } from '@espalier/domain/pitch'
import { PitchDrawing } from '../../drawing/pitch-drawing'
import { spacesMessage } from '../../messages/spaces'
import { Origin } from '../../ui/origin/origin'

/** A space as it will be drawn, with what is worth knowing about it; never a refusal. */
export function SpacePicture({ space }: { readonly space: Space }) {
  const notes = checkSpace(space)
  return (
    <div className="flex flex-col gap-4">
      <div className="max-w-md">
        <PitchDrawing space={space} medium="desk" title={spacesMessage('drawing')} annotated />
      </div>
      <section aria-label={spacesMessage('notes')} className="max-w-text">
        <h3 className="font-semibold">{spacesMessage('notes')}</h3>
        {notes.length === 0 && <p className="text-ink-soft">{spacesMessage('noNotes')}</p>}
        <ul>
          {notes.map((note) => (
            <li key={note.code} className="border-l-2 border-dotted border-ink-soft py-1 pl-3">
              {note.sentence} <Origin word={note.kind}>{note.source}</Origin>
            </li>
          ))}
        </ul>
      </section>
    </div>
  )
}

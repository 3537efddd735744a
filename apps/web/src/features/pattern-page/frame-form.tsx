import { FORMAT_IDS, type FormatId, formats } from '@espalier/domain/formats'
import { ENGLISH, type PatternDocument, RESTARTS } from '@espalier/domain/pattern'
import type { Side } from '@espalier/domain/pitch'
import { patternsMessage } from '../../messages/patterns'
import { TextField } from '../../ui/text-field/text-field'
import { AGE_GROUPS } from '../writing/age-groups'
import { BlankChoice, type PartChoice } from '../writing/blank'
import type { OnChange } from './change-callback'
import { formationChoices } from './possible-choices'

type FrameFormProps = { readonly document: PatternDocument; readonly onChange: OnChange }

/** What the pattern is: its title, the problem it answers, and the game it is played in, as one sentence with blanks. */
export function FrameForm({ document, onChange }: FrameFormProps) {
  return (
    <div className="flex flex-col gap-3">
      <TextField
        name="document/title"
        label={patternsMessage('titleField')}
        placeholder={patternsMessage('titlePlaceholder')}
        value={document.title}
        onChange={(event) => onChange({ kind: 'words', field: 'title', text: event.currentTarget.value }, 'title')}
        maxLength={80}
        autoComplete="off"
      />
      <TextField
        name="document/problem"
        label={patternsMessage('problemField')}
        placeholder={patternsMessage('problemPlaceholder')}
        value={document.problem}
        onChange={(event) => onChange({ kind: 'words', field: 'problem', text: event.currentTarget.value }, 'problem')}
        maxLength={160}
        autoComplete="off"
      />
      <GameSentence document={document} onChange={onChange} />
    </div>
  )
}

function GameSentence({ document, onChange }: FrameFormProps) {
  return (
    <p className="flex flex-wrap items-baseline gap-x-2">
      <BlankChoice
        label={patternsMessage('restartField')}
        value={document.restart}
        choices={RESTARTS.map((value) => ({ value, label: ENGLISH.restarts[value], off: null }))}
        onChoose={(restart) => onChange({ kind: 'restart', restart })}
      />
      <span>{patternsMessage('in')}</span>
      <BlankChoice
        label={patternsMessage('formatField')}
        value={document.formatId}
        choices={FORMAT_CHOICES}
        onChoose={(formatId) => onChange({ kind: 'format', formatId })}
      />
      <BlankChoice
        label={patternsMessage('formationField')}
        value={document.formation}
        choices={formationChoices(document)}
        onChoose={(formation) => onChange({ kind: 'formation', formation })}
      />
      <span>{patternsMessage('for')}</span>
      <BlankChoice
        label={patternsMessage('ageField')}
        value={document.ageGroup}
        choices={AGE_GROUPS.map((value) => ({ value, label: value, off: null }))}
        onChoose={(ageGroup) => onChange({ kind: 'age-group', ageGroup })}
      />
      <span>{patternsMessage('writtenFor')}</span>
      <BlankChoice
        label={patternsMessage('sideField')}
        value={document.writtenFor}
        choices={SIDE_CHOICES}
        onChoose={(side) => onChange({ kind: 'side', side })}
      />
    </p>
  )
}

const FORMAT_CHOICES: readonly PartChoice<FormatId>[] = FORMAT_IDS.map((value) => ({
  value,
  label: formats[value].name,
  off: null,
})).reverse()

const SIDE_CHOICES: readonly PartChoice<Side>[] = [
  { value: 'left', label: patternsMessage('sideLeft'), off: null },
  { value: 'right', label: patternsMessage('sideRight'), off: null },
]

'use client'

import type { PatternSummary } from '@espalier/contract/patterns'
import type { DraftDocument, PatternStanding, PublishFault, VersionContent } from '@espalier/domain/curriculum'
import { FORMAT_IDS, formats } from '@espalier/domain/formats'
import { useMemo } from 'react'
import { curriculaMessage } from '../../messages/curricula'
import { Section } from '../../shell/section'
import { TextField } from '../../ui/text-field/text-field'
import { AGE_GROUPS } from '../writing/age-groups'
import { BlankChoice } from '../writing/blank'
import { KeptNotice } from '../writing/kept-notice'
import { SaveBar } from '../writing/save-bar'
import { SaveFailure } from '../writing/save-failure'
import { StaleChoice } from '../writing/stale-choice'
import { useWriting } from '../writing/use-writing'
import type { DraftFormProps } from './draft-form-props'
import { ProgressionsForm } from './draft-sections'
import { draftLines } from './draft-words'
import { changeDraft, type DraftChange } from './edit-draft'
import { faultsInTheWay } from './pattern-standing'
import { PublishFaults } from './publish-faults'
import { PublishPress } from './publish-press'
import { SessionsForm } from './sessions-form'
import { type DraftFault, listWrongs, tidyDraft, unfinishedDraft } from './tidy-draft'
import { useSaveDraft } from './use-save-draft'

type DraftWriterProps = {
  readonly clubId: string
  readonly curriculumId: string
  readonly saved: { readonly version: number; readonly document: DraftDocument }
  readonly patterns: readonly PatternSummary[]
  /** What the check says of the patterns that the saved draft uses. */
  readonly standings: readonly PatternStanding[]
  readonly latest: VersionContent | null
}

/** A curriculum being written: progressions of stages and model sessions; from here it is published. */
export function DraftWriter({ clubId, curriculumId, saved, patterns, standings, latest }: DraftWriterProps) {
  const writing = useWriting<DraftDocument, DraftChange>({
    name: `draft ${clubId} ${curriculumId}`,
    saved,
    change: changeDraft,
    tidy: tidyDraft,
    shape: unfinishedDraft,
  })
  const { document: draft, tidied, dispatch } = writing
  const wrongs = useMemo(() => listWrongs(tidied), [tidied])
  const inTheWay = useMemo(() => faultsInTheWay(tidied, standings, patterns), [tidied, standings, patterns])
  const saving = useSaveDraft({ clubId, curriculumId, writing })
  const onChange: DraftFormProps['onChange'] = (edit, typingIn) =>
    dispatch(typingIn === undefined ? { kind: 'edit', edit } : { kind: 'edit', edit, typingIn })
  const form = { clubId, draft, patterns, onChange }
  const titleOf = (patternId: string) =>
    patterns.find((pattern) => pattern.patternId === patternId)?.title ?? curriculaMessage('patternGone')
  return (
    <div className="flex flex-col gap-6">
      <KeptNotice isBack={writing.isBack} onDiscard={writing.discard} />
      {saving.stale !== null && (
        <StaleChoice
          version={saving.stale.version}
          mine={draftLines(tidied, titleOf)}
          theirs={draftLines(saving.stale.document, titleOf)}
          onKeepMine={saving.keepMine}
          onTakeTheirs={saving.takeTheirs}
        />
      )}
      <CurriculumFrame {...form} />
      <Section id="progressions" title={curriculaMessage('progressions')} kind="do">
        <ProgressionsForm {...form} />
      </Section>
      <Section id="sessions" title={curriculaMessage('sessions')} kind="do">
        <SessionsForm {...form} />
      </Section>
      <Wrongs wrongs={wrongs} />
      <InTheWay {...{ clubId, draft: tidied, faults: inTheWay, number: (latest?.number ?? 0) + 1 }} />
      <SaveBar
        notice={<SaveFailure failure={saving.failure} isShownAsClash={saving.stale !== null} />}
        version={writing.saved.version}
        isChanged={writing.isChanged}
        isKept={writing.isKept}
        sending={saving.isSending}
        offBecause={offBecause(wrongs, writing.isChanged)}
        canUndo={writing.canUndo}
        canRedo={writing.canRedo}
        onSave={saving.save}
        onUndo={() => dispatch({ kind: 'undo' })}
        onRedo={() => dispatch({ kind: 'redo' })}
      >
        <PublishPress
          {...{ clubId, curriculumId, patterns, latest }}
          draft={tidied}
          version={writing.saved.version}
          offBecause={writing.isChanged ? curriculaMessage('publishSaveFirst') : null}
        />
      </SaveBar>
    </div>
  )
}

function CurriculumFrame({ draft, onChange }: DraftFormProps) {
  return (
    <div className="flex flex-col gap-3">
      <TextField
        name="document/name"
        label={curriculaMessage('name')}
        value={draft.name}
        onChange={(event) => onChange({ kind: 'name', text: event.currentTarget.value }, 'name')}
        maxLength={80}
        autoComplete="off"
      />
      <p className="flex flex-wrap items-baseline gap-x-2">
        <span>{curriculaMessage('for')}</span>
        <BlankChoice
          label={curriculaMessage('ageGroup')}
          value={draft.ageGroup}
          choices={AGE_GROUPS.map((value) => ({ value, label: value, off: null }))}
          onChoose={(ageGroup) => onChange({ kind: 'age-group', ageGroup })}
        />
        <span>{curriculaMessage('playing')}</span>
        <BlankChoice
          label={curriculaMessage('format')}
          value={draft.formatId}
          choices={[...FORMAT_IDS].reverse().map((value) => ({ value, label: formats[value].name, off: null }))}
          onChoose={(formatId) => onChange({ kind: 'format', formatId })}
        />
      </p>
    </div>
  )
}

function Wrongs({ wrongs }: { readonly wrongs: readonly DraftFault[] }) {
  if (wrongs.length === 0) return null
  return (
    <div className="border-l-[7px] border-double border-ink pl-3">
      <p className="font-semibold">{curriculaMessage('mendFirst')}</p>
      <ul>
        {wrongs.map(({ pointer, detail }) => (
          <li key={`${pointer} ${detail}`}>{detail}</li>
        ))}
      </ul>
    </div>
  )
}

type InTheWayProps = {
  readonly clubId: string
  readonly draft: DraftDocument
  readonly faults: readonly PublishFault[]
  readonly number: number
}

/** Said before the press, and all at once: nobody should learn it one refusal after another. */
function InTheWay({ clubId, draft, faults, number }: InTheWayProps) {
  if (faults.length === 0) return null
  return (
    <section aria-labelledby="in-the-way" className="max-w-text border-l-[7px] border-double border-ink pl-3">
      <h2 id="in-the-way" className="font-semibold">
        {curriculaMessage('inTheWay', { number })}
      </h2>
      <PublishFaults clubId={clubId} draft={draft} faults={faults} />
    </section>
  )
}

function offBecause(wrongs: readonly DraftFault[], isChanged: boolean): string | null {
  if (!isChanged) return curriculaMessage('nothingNew')
  return wrongs.length === 0 ? null : curriculaMessage('saveOff')
}

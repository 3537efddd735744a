import { PROFILE_IDS, type ProfileId, profileFor, SURFACES, type Surface } from '@espalier/domain/check'
import { formatOf } from '@espalier/domain/formats'
import { nominalSpace } from '@espalier/domain/pitch'
import { metresOf } from '@espalier/domain/quantities'
import { patternsMessage } from '../../messages/patterns'
import { Origin } from '../../ui/origin/origin'
import { BlankChoice } from '../writing/blank'
import { metresText } from '../writing/metres-blank'
import { type CheckSetting, checkedProfile } from './check-setting'
import { originWord } from './margin-notes'
import type { PatternReading } from './pattern-reading'

const SURFACE_WORDS = {
  hall: 'surfaceHall',
  fast: 'surfaceFast',
  normal: 'surfaceNormal',
  slow: 'surfaceSlow',
  bad: 'surfaceBad',
  heavy: 'surfaceHeavy',
} as const satisfies Record<Surface, string>

type OnSetting = (setting: CheckSetting) => void

type CheckedForProps = { readonly reading: PatternReading; readonly onSetting?: OnSetting | undefined }

/** For whom, on what ground and on what pitch the notes hold, and that silence means that all fits. */
export function CheckedFor({ reading, onSetting }: CheckedForProps) {
  const { document, check, notes, ownValues } = reading
  if (check === null) return <p className="text-small text-ink-soft">{patternsMessage('checkWaits')}</p>
  return (
    <div className="text-small text-ink-soft">
      {notes.length === 0 && <p>{patternsMessage('noNotes')}</p>}
      {onSetting === undefined ? (
        <p>{checkedForWords(reading)}</p>
      ) : (
        <SettingSentence reading={reading} onSetting={onSetting} />
      )}
      <Origin word={originWord('habit')}>{patternsMessage('checkedOrigin', { age: profileOf(reading) })}</Origin>
      {ownValues > 0 && (
        <p>{patternsMessage(ownValues === 1 ? 'checkedOwnOne' : 'checkedOwnMany', { count: ownValues })}</p>
      )}
      {document.ageGroup !== profileOf(reading) && (
        <p>{patternsMessage('checkedOtherAge', { age: document.ageGroup })}</p>
      )}
    </div>
  )
}

/** The same as one sentence, for paper. */
export function checkedForWords(reading: PatternReading): string {
  return patternsMessage('checkedFor', {
    age: profileOf(reading),
    surface: patternsMessage(SURFACE_WORDS[reading.setting.surface]),
    pitch: pitchWords(reading),
  })
}

function SettingSentence({ reading, onSetting }: { readonly reading: PatternReading; readonly onSetting: OnSetting }) {
  const { document, setting } = reading
  const own = profileFor(document.ageGroup).profileId
  return (
    <p className="flex flex-wrap items-baseline gap-x-1">
      <span>{patternsMessage('checkedForStart')}</span>
      <BlankChoice
        label={patternsMessage('profileField')}
        value={profileOf(reading)}
        choices={PROFILE_IDS.map((value) => ({ value, label: value, off: null }))}
        onChoose={(value) => onSetting({ ...setting, profileId: value === own ? null : value })}
      />
      <span>{patternsMessage('checkedOn')}</span>
      <BlankChoice
        label={patternsMessage('surfaceField')}
        value={setting.surface}
        choices={SURFACES.map((value) => ({ value, label: patternsMessage(SURFACE_WORDS[value]), off: null }))}
        onChoose={(surface) => onSetting({ ...setting, surface })}
      />
      <span>{patternsMessage('checkedPitch', { pitch: pitchWords(reading) })}</span>
    </p>
  )
}

function profileOf({ document, setting }: PatternReading): ProfileId {
  return checkedProfile(document, setting)
}

function pitchWords({ document }: PatternReading): string {
  const { lengthMm, widthMm } = nominalSpace(document.formatId)
  const sizes = { length: metresText(round(lengthMm)), width: metresText(round(widthMm)) }
  return patternsMessage('usualPitch', { ...sizes, format: formatOf(document.formatId).name })
}

/** To a tenth of a metre. */
function round(length: Parameters<typeof metresOf>[0]): number {
  return Math.round(metresOf(length) * 10) * 100
}

import type { LookCover } from '@espalier/domain/check'
import type { FormatChoices } from '@espalier/domain/formats'
import type { PatternDocument } from '@espalier/domain/pattern'
import { useState } from 'react'
import { patternsMessage } from '../../messages/patterns'
import { Origin } from '../../ui/origin/origin'
import { BlankChoice } from '../writing/blank'
import { CoverMap } from './cover-map'
import { type CoverReader, coverSentence, lookTitle } from './cover-words'
import { originWord } from './margin-notes'
import { isOld, Told } from './told'
import type { UnderPressureProps } from './under-pressure'

/** For each look from where it is open, and for one of them what is best where. */
export function LooksCover({ under, reading, choices, reader }: UnderPressureProps) {
  const told = under.looks
  // An answer speaks of the document it was computed for, words and drawing alike.
  const document = told?.question.document ?? reading.document
  const looks = told?.value ?? []
  if (document.looks.length === 0 && reading.document.looks.length === 0) {
    return <p>{patternsMessage(reader === 'director' ? 'looksNone' : 'looksNoneRead')}</p>
  }
  return (
    <Told told={told} under={under}>
      {isOld(told, under) && <p className="pattern-looks-old">{patternsMessage('pressureOld')}</p>}
      <div className="pattern-looks">
        <div className="pattern-looks-words">
          {looks.map((look) => (
            <LookWords key={look.lookId} document={document} look={look} reader={reader} />
          ))}
          {looks.length > 0 && <Origin word={originWord('computed')}>{patternsMessage('coverOrigin')}</Origin>}
        </div>
        <LookMap document={document} looks={looks} choices={choices} />
      </div>
    </Told>
  )
}

type LookWordsProps = { readonly document: PatternDocument; readonly look: LookCover; readonly reader: CoverReader }

function LookWords({ document, look, reader }: LookWordsProps) {
  return (
    <div>
      <h3 className="font-semibold">{lookTitle(document, look, 'lookTitle')}</h3>
      <ul className="mt-1 flex max-w-text flex-col">
        {look.counts.map((count) => (
          <li key={count.opponents} className="border-t border-wire py-1.5">
            {coverSentence(count, reader)}
          </li>
        ))}
      </ul>
    </div>
  )
}

type LookMapProps = {
  readonly document: PatternDocument
  readonly looks: readonly LookCover[]
  readonly choices: FormatChoices
}

function LookMap({ document, looks, choices }: LookMapProps) {
  const [chosen, setChosen] = useState<string | null>(null)
  const look = looks.find((each) => each.lookId === chosen) ?? looks[0] ?? null
  const shared = { document, choices, cover: look }
  return (
    <div className="pattern-map">
      <p className="flex min-h-target flex-wrap items-baseline gap-x-1 text-small">
        <span>{patternsMessage(looks.length > 1 ? 'mapFor' : 'mapTitle')}</span>
        {look !== null && looks.length > 1 && (
          <BlankChoice
            label={patternsMessage('mapLookField')}
            value={look.lookId}
            choices={looks.map((each) => ({
              value: each.lookId,
              label: lookTitle(document, each, 'mapLook'),
              off: null,
            }))}
            onChoose={setChosen}
          />
        )}
      </p>
      <div className="max-desk:hidden print:hidden">
        <CoverMap {...shared} medium="desk" />
      </div>
      <div className="desk:hidden print:hidden">
        <CoverMap {...shared} medium="phone" />
      </div>
      <div className="hidden print:block">
        <CoverMap {...shared} medium="paper" />
      </div>
    </div>
  )
}

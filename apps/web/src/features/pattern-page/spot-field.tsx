'use client'

import type { PatternDocument } from '@espalier/domain/pattern'
import type { Spot } from '@espalier/domain/pitch'
import { type Millimetres, millimetres } from '@espalier/domain/quantities'
import { useState } from 'react'
import { patternsMessage } from '../../messages/patterns'
import { BlankChoice } from '../writing/blank'
import { MetresBlank } from '../writing/metres-blank'
import { anchorChoices, landmarkValue, type NamedSpot, namedValue, readAnchor, spotLiesWords } from './spot-choices'

type SpotFieldProps = {
  readonly document: PatternDocument
  readonly spot: Spot
  /** What stands there, for whoever hears the blanks: "where RW starts". */
  readonly what: string
  /** Its own name among the pattern's places, so that it is not measured from itself. */
  readonly ownKey: string
  readonly onChange: (spot: Spot) => void
}

const REACH = 150_000

/**
 * A place on the pitch as a sentence: so many metres up and right of a landmark, or of another place of the pattern. It
 * is always kept as a landmark with metres; measuring from another place is only a way to say it.
 */
export function SpotField({ document, spot, what, ownKey, onChange }: SpotFieldProps) {
  const [anchor, setAnchor] = useState<NamedSpot | null>(null)
  const measured = anchor !== null && anchor.spot.landmark === spot.landmark ? anchor : null
  const base = { upMm: measured?.spot.upMm ?? 0, rightMm: measured?.spot.rightMm ?? 0 }
  const write = (side: 'upMm' | 'rightMm') => (length: Millimetres) =>
    onChange({ ...spot, [side]: millimetres(Math.max(-REACH, Math.min(REACH, base[side] + length))) })

  function choose(value: string) {
    const chosen = readAnchor(document, value)
    if (chosen === null) return
    if (chosen.kind === 'landmark') {
      setAnchor(null)
      onChange({ ...spot, landmark: chosen.landmark })
    } else {
      setAnchor(chosen.place)
      onChange(chosen.place.spot)
    }
  }

  return (
    <span className="inline-flex max-w-full flex-wrap items-baseline gap-x-1">
      <MetresBlank
        label={patternsMessage('spotUp', { what })}
        value={spot.upMm - base.upMm}
        onWrite={write('upMm')}
        least={-REACH}
        most={REACH}
      />
      <span>{patternsMessage('spotUpWord')}</span>
      <MetresBlank
        label={patternsMessage('spotRight', { what })}
        value={spot.rightMm - base.rightMm}
        onWrite={write('rightMm')}
        least={-REACH}
        most={REACH}
      />
      <span>{patternsMessage('spotRightWord')}</span>
      <BlankChoice
        label={patternsMessage('spotFrom', { what })}
        value={measured === null ? landmarkValue(spot.landmark) : namedValue(measured.key)}
        choices={anchorChoices(document, ownKey)}
        onChoose={choose}
      />
      <span className="basis-full text-small text-ink-soft">
        {spotLiesWords(document, spot)}
        {measured !== null && `. ${patternsMessage('spotKept')}`}
      </span>
    </span>
  )
}

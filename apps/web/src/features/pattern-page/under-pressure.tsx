import './under-pressure.css'
import type { FormatChoices } from '@espalier/domain/formats'
import { patternsMessage } from '../../messages/patterns'
import { Section } from '../../shell/section'
import { Origin } from '../../ui/origin/origin'
import { Status } from '../../ui/status/status'
import { checkedForWords } from './checked-for'
import type { CoverReader } from './cover-words'
import { LooksCover } from './looks-cover'
import { originWord } from './margin-notes'
import type { PatternReading } from './pattern-reading'
import { PressureLine } from './pressure-line'
import type { PressureWords } from './pressure-message'
import { isOld, Told } from './told'
import { isWorking, type UnderPressure } from './use-under-pressure'

export type UnderPressureProps = {
  readonly under: UnderPressure
  readonly reading: PatternReading
  readonly choices: FormatChoices
  readonly reader: CoverReader
}

/** How far the pattern gets against opponents, and from where its looks have an answer. */
export function UnderPressureSection(props: UnderPressureProps) {
  const { under, reading } = props
  return (
    <div className="pattern-pressure">
      <Section id="under-pressure" title={patternsMessage('underPressure')}>
        <Status>{statusWords(under)}</Status>
        <Told told={under.pressure} under={under}>
          <Pressure words={under.pressure?.value ?? null} />
        </Told>
        <p className="hidden text-small text-ink-soft print:block">{checkedForWords(reading)}</p>
      </Section>
      <Section id="looks" title={patternsMessage('looks')}>
        <LooksCover {...props} />
      </Section>
    </div>
  )
}

/** How far the work is, and whether what stands below is of before. */
function statusWords(under: UnderPressure): string {
  const words = [isOld(under.pressure, under) ? patternsMessage('pressureOld') : '', stateWords(under)]
  return words.filter((each) => each !== '').join(' ')
}

function stateWords(under: UnderPressure): string {
  if (under.fault !== null) return patternsMessage('pressureFault')
  if (isWorking(under)) return patternsMessage('pressureWorking')
  if (under.asked !== null) return patternsMessage('pressureTold')
  return under.pressure === null ? '' : patternsMessage('pressureWaits')
}

/** With as much room before the first answer as it will need. */
function Pressure({ words }: { readonly words: PressureWords | null }) {
  return (
    <div className="pattern-pressure-words">
      {words !== null && (
        <>
          <PressureLine {...words} />
          <p className="text-script font-semibold">{words.headline}</p>
          <Mends mends={words.mends} />
          <ul className="mt-3 flex max-w-text flex-col">
            {words.behaviours.map(({ sentence, mends }) => (
              <li key={sentence} className="border-t border-wire py-1.5">
                {sentence}
                {mends.length > 0 && (
                  <details className="text-small print:hidden">
                    <summary className="inline-flex min-h-target items-center text-ink-soft underline underline-offset-[0.2em] desk:min-h-6">
                      {patternsMessage('pressureMends')}
                    </summary>
                    <Mends mends={mends} />
                  </details>
                )}
              </li>
            ))}
          </ul>
          <p className="max-w-text border-t border-wire pt-1.5 text-small text-ink-soft">
            {patternsMessage('pressureCaution')}
          </p>
          <Origin word={originWord('computed')}>{patternsMessage('pressureOrigin')}</Origin>
        </>
      )}
    </div>
  )
}

function Mends({ mends }: { readonly mends: readonly string[] }) {
  return mends.map((mend) => (
    <p key={mend} className="max-w-text">
      {mend}
    </p>
  ))
}

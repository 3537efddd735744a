import { coverOf } from '@espalier/domain/check'
import { pressureOn, type Stopped, sayBehaviours, sayMend, sayWorksAgainst } from '@espalier/domain/check/pressure'
import type { PatternDocument } from '@espalier/domain/pattern'
import { nominalSpace } from '@espalier/domain/pitch'
import { checkOptionsOf } from './check-setting'
import type { PressureAnswer, PressureQuestion, PressureWords } from './pressure-message'

/** Everything the worker computes for a question, part by part; the document must have passed `checkShape`. */
export function* answerPressure(question: PressureQuestion): Generator<PressureAnswer> {
  const { revision, document } = question
  try {
    const space = nominalSpace(document.formatId)
    const options = checkOptionsOf(document, question.choices, question.setting)
    yield { revision, part: 'looks', looks: coverOf(document, space, options) }
    yield { revision, part: 'pressure', pressure: wordsOf(document, pressureOn(document, space, options)) }
  } catch (error) {
    // A check that breaks is our mistake; the page then says so instead of waiting for ever.
    yield { revision, part: 'fault', fault: error instanceof Error ? error.message : String(error) }
  }
}

function wordsOf(document: PatternDocument, report: ReturnType<typeof pressureOn>): PressureWords {
  const sentences = sayBehaviours(document, report)
  const mendsOf = (stopped: Stopped | null) => (stopped?.mends ?? []).map((mend) => sayMend(document, mend))
  return {
    headline: sayWorksAgainst(document, report),
    mends: mendsOf(report.firstStopped),
    behaviours: report.behaviours.map(({ behaviour, stopped }, index) => ({
      sentence: sentences[index] ?? '',
      // Those of the first break stand under the headline.
      mends: behaviour === report.firstStopped?.behaviour ? [] : mendsOf(stopped),
    })),
    worksAgainst: report.worksAgainst,
    tried: report.tried,
    isStopped: report.firstStopped !== null,
  }
}

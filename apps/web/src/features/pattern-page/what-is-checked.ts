import type { PatternDocument } from '@espalier/domain/pattern'
import { mapSteps } from './map-steps'

/** A pattern without the words that no check reads. */
export function whatIsChecked(document: PatternDocument): PatternDocument {
  const silent = mapSteps(document, (step) => (step.point === '' ? step : { ...step, point: '' }))
  return { ...silent, title: '', problem: '', teaching: NO_WORDS }
}

const NO_WORDS: PatternDocument['teaching'] = {
  why: '',
  good: '',
  mistakes: [],
  question: '',
  easier: '',
  harder: '',
  callWords: [],
  goLong: '',
}

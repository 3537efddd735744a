import texts from './en/coverage.json'
import { speakerOf } from './message'

export const coverageMessage = speakerOf(texts)

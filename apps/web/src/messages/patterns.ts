import texts from './en/patterns.json'
import { speakerOf } from './message'

export const patternsMessage = speakerOf(texts)

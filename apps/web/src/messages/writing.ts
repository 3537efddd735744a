import texts from './en/writing.json'
import { speakerOf } from './message'

export const writingMessage = speakerOf(texts)

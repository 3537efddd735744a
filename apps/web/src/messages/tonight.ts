import texts from './en/tonight.json'
import { speakerOf } from './message'

export const tonightMessage = speakerOf(texts)

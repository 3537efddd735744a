import texts from './en/line-ups.json'
import { speakerOf } from './message'

export const lineUpsMessage = speakerOf(texts)

import texts from './en/set-out.json'
import { speakerOf } from './message'

export const setOutMessage = speakerOf(texts)

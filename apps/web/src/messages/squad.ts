import texts from './en/squad.json'
import { speakerOf } from './message'

export const squadMessage = speakerOf(texts)

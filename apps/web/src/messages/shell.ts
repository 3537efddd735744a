import texts from './en/shell.json'
import { speakerOf } from './message'

export const shellMessage = speakerOf(texts)

import texts from './en/sign-in.json'
import { speakerOf } from './message'

export const signInMessage = speakerOf(texts)

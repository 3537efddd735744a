import texts from './en/spaces.json'
import { speakerOf } from './message'

export const spacesMessage = speakerOf(texts)

import texts from './en/people.json'
import { speakerOf } from './message'

export const peopleMessage = speakerOf(texts)

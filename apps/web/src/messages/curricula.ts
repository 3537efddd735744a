import texts from './en/curricula.json'
import { speakerOf } from './message'

export const curriculaMessage = speakerOf(texts)

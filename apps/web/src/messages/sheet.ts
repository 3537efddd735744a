import texts from './en/sheet.json'
import { speakerOf } from './message'

export const sheetMessage = speakerOf(texts)

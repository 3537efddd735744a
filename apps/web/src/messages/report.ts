import texts from './en/report.json'
import { speakerOf } from './message'

export const reportMessage = speakerOf(texts)

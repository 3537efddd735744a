import texts from './en/drawing.json'
import { speakerOf } from './message'

export const drawingMessage = speakerOf(texts)

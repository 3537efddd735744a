import type { Examples } from '../example'
import { DialogExample } from './dialog-example'

export const dialogExamples = { 'opened by a press': <DialogExample /> } satisfies Examples

import type { Examples } from '../example'
import { Status } from './status'

export const statusExamples = {
  'nothing to say yet': <Status>{null}</Status>,
  saved: <Status>Saved on this phone</Status>,
} satisfies Examples

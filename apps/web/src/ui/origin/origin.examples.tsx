import type { Examples } from '../example'
import { Origin } from './origin'

export const originExamples = {
  'a habit': (
    <div>
      Each change costs 3 min. <Origin word="habit">Common practice, no source.</Origin>
    </div>
  ),
} satisfies Examples

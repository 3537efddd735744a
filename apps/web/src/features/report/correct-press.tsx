import { paths, pathTo } from '@espalier/contract/paths'
import { recordList } from '@espalier/contract/records'
import { useState } from 'react'
import { readInBrowser } from '../../api/browser'
import { reportMessage } from '../../messages/report'
import { Button } from '../../ui/button/button'
import { patternActivity } from '../tonight/evening-parts'
import type { Tonight } from '../tonight/use-tonight'
import { type Corrected, findCorrected, reportedPattern } from './corrected-report'

type CorrectPressProps = { readonly tonight: Tonight; readonly onFound: (corrected: Corrected) => void }

/** Fetches the report as the club has it, so that a correction begins with what stands and not with what a phone recalls. */
export function CorrectPress({ tonight, onFound }: CorrectPressProps) {
  const { kit, chosen, evening, planned } = tonight
  const [state, setState] = useState<'ready' | 'asking' | 'no-answer' | 'none'>('ready')

  async function ask() {
    if (state === 'asking') return
    setState('asking')
    const path = pathTo(paths.teamRecords, { clubId: kit.club.clubId, teamId: kit.team.teamId })
    const answer = await readInBrowser(path, recordList)
    if (!answer.ok) return setState('no-answer')
    const { records } = answer.value
    const record = findCorrected({ records, dateId: chosen.date.dateId, reportId: evening.reportId })
    if (record === null) return setState('none')
    const own = planned.plan === null ? null : patternActivity(planned.plan)
    onFound({ record, pattern: reportedPattern(record, kit, own) })
  }

  return (
    <div className="flex flex-col items-start gap-2">
      <Button onClick={() => void ask()} aria-busy={state === 'asking'}>
        {reportMessage('correct')}
      </Button>
      <p role="status">
        {state === 'no-answer'
          ? reportMessage('correctNoAnswer')
          : state === 'none'
            ? reportMessage('correctNone')
            : ''}
      </p>
    </div>
  )
}

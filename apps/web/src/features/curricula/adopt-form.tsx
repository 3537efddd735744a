'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Team } from '@espalier/contract/places'
import { useRouter } from 'next/navigation'
import { type FormEvent, useState } from 'react'
import { newUuid } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { curriculaMessage } from '../../messages/curricula'
import { dateWords } from '../../shell/dates'
import { FailureNotice, wrongAt } from '../../shell/failure-notice'
import { textOf } from '../../shell/form-values'
import { Button } from '../../ui/button/button'
import { SelectField } from '../../ui/select-field/select-field'
import { Status } from '../../ui/status/status'
import { TextField } from '../../ui/text-field/text-field'

type AdoptFormProps = {
  readonly clubId: string
  readonly curriculumId: string
  readonly number: number
  /** Teams this person may move. */
  readonly teams: readonly Team[]
  /** Names of curricula by id, for what teams follow now. */
  readonly names: Readonly<Record<string, string>>
  readonly today: string
}

/** Makes a team follow this version from a day on. */
export function AdoptForm({ clubId, curriculumId, number, teams, names, today }: AdoptFormProps) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [id, setId] = useState(newUuid)
  const [teamId, setTeamId] = useState(teams[0]?.teamId ?? '')
  const [done, setDone] = useState<string | null>(null)
  const team = teams.find((each) => each.teamId === teamId)
  const follows = team?.follows?.curriculumId === curriculumId && team.follows.number === number

  async function adopt(event: FormEvent<HTMLFormElement>) {
    event.preventDefault()
    if (state === 'sending' || team === undefined) return
    setDone(null)
    const fromDate = textOf(new FormData(event.currentTarget), 'fromDate')
    const body = { id, curriculumId, number, fromDate }
    const outcome = await send({ method: 'POST', path: pathTo(paths.adoptions, { clubId, teamId }), body })
    if (!outcome.ok) return
    setId(newUuid())
    setDone(curriculaMessage('adopted', { team: team.name, number, date: dateWords(fromDate) }))
    router.refresh()
  }

  return (
    <form onSubmit={adopt} className="flex flex-col gap-4">
      <p className="max-w-text">{curriculaMessage('adoptMeans')}</p>
      <SelectField
        name="teamId"
        label={curriculaMessage('team')}
        choices={teams.map((each) => ({ value: each.teamId, label: teamWords(each, names) }))}
        value={teamId}
        onChange={(event) => setTeamId(event.currentTarget.value)}
      />
      <TextField
        name="fromDate"
        type="date"
        label={curriculaMessage('fromDate')}
        defaultValue={today}
        wrong={wrongAt(failure, '/fromDate')}
        required
      />
      <FailureNotice failure={failure} />
      <div>
        <Button
          type="submit"
          kind={follows ? 'plain' : 'next'}
          aria-busy={state === 'sending'}
          offBecause={follows ? curriculaMessage('followsAlready') : null}
        >
          {state === 'sending'
            ? curriculaMessage('adopting')
            : curriculaMessage('adopt', { team: team?.name ?? '', number })}
        </Button>
      </div>
      <Status>{done}</Status>
    </form>
  )
}

function teamWords({ name, follows }: Team, names: AdoptFormProps['names']): string {
  if (follows === null) return curriculaMessage('teamFollowsNothing', { team: name })
  const { curriculumId, number, fromDate } = follows
  const values = { team: name, number, date: dateWords(fromDate) }
  const curriculum = names[curriculumId]
  return curriculum === undefined
    ? curriculaMessage('teamFollows', values)
    : curriculaMessage('teamFollowsNamed', { ...values, curriculum })
}

'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Person } from '@espalier/contract/people'
import type { Team } from '@espalier/contract/places'
import { useRouter } from 'next/navigation'
import { type FormEvent, useState } from 'react'
import { useCommand } from '../../api/use-command'
import { peopleMessage } from '../../messages/people'
import { FailureNotice, wrongAt } from '../../shell/failure-notice'
import { textOf } from '../../shell/form-values'
import { Button } from '../../ui/button/button'
import { Status } from '../../ui/status/status'
import { TextField } from '../../ui/text-field/text-field'
import { PersonRoles, rolesOf } from './person-roles'

type EditPersonFormProps = {
  readonly clubId: string
  readonly person: Person
  readonly teams: readonly Pick<Team, 'teamId' | 'name'>[]
}

export function EditPersonForm({ clubId, person, teams }: EditPersonFormProps) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  const [done, setDone] = useState<'saved' | 'ended' | null>(null)
  const stale = failure?.kind === 'problem' && failure.problem.code === 'version-is-stale'

  async function put(body: { displayName: string; roles: Person['roles']; left: boolean }, word: 'saved' | 'ended') {
    if (state === 'sending') return
    setDone(null)
    const path = pathTo(paths.person, { clubId, memberId: person.memberId })
    const outcome = await send({ method: 'PUT', path, body, fromVersion: person.version })
    if (!outcome.ok) return
    setDone(word)
    router.refresh()
  }

  function save(event: FormEvent<HTMLFormElement>) {
    event.preventDefault()
    const form = new FormData(event.currentTarget)
    void put({ displayName: textOf(form, 'displayName'), roles: [...rolesOf(form, teams)], left: false }, 'saved')
  }

  return (
    <div className="flex flex-col gap-8">
      <form onSubmit={save} className="flex flex-col gap-5">
        <TextField
          name="displayName"
          label={peopleMessage('name')}
          wrong={wrongAt(failure, '/displayName')}
          defaultValue={person.displayName}
          required
          maxLength={60}
          autoComplete="off"
        />
        <PersonRoles teams={teams} held={person.roles} />
        <FailureNotice failure={failure} />
        {stale && <Button onClick={() => window.location.reload()}>{peopleMessage('reload')}</Button>}
        <div>
          <Button type="submit" kind="next" aria-busy={state === 'sending'}>
            {peopleMessage(state === 'sending' ? 'saving' : 'save')}
          </Button>
        </div>
        <Status>{done === null ? null : peopleMessage(done)}</Status>
      </form>
      {!person.left && (
        <section aria-labelledby="end" className="flex flex-col items-start gap-3 border-t border-wire pt-3">
          <h2 id="end" className="text-lead leading-tight font-semibold">
            {peopleMessage('endTitle')}
          </h2>
          <p className="max-w-text">{peopleMessage('endLead')}</p>
          <Button onClick={() => put({ displayName: person.displayName, roles: [], left: true }, 'ended')}>
            {peopleMessage('end')}
          </Button>
        </section>
      )}
    </div>
  )
}

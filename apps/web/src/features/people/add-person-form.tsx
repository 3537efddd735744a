'use client'

import { paths, pathTo } from '@espalier/contract/paths'
import type { Team } from '@espalier/contract/places'
import { useRouter } from 'next/navigation'
import { type FormEvent, useState } from 'react'
import { newUuid } from '../../api/identifiers'
import { useCommand } from '../../api/use-command'
import { peopleMessage } from '../../messages/people'
import { FailureNotice, wrongAt } from '../../shell/failure-notice'
import { textOf } from '../../shell/form-values'
import { Button } from '../../ui/button/button'
import { Status } from '../../ui/status/status'
import { TextField } from '../../ui/text-field/text-field'
import { PersonRoles, rolesOf } from './person-roles'

type AddPersonFormProps = {
  readonly clubId: string
  readonly teams: readonly Pick<Team, 'teamId' | 'name'>[]
}

export function AddPersonForm({ clubId, teams }: AddPersonFormProps) {
  const router = useRouter()
  const { state, failure, send } = useCommand()
  // Made once for each person to add, so that pressing again after a lost answer adds nobody twice.
  const [id, setId] = useState(newUuid)
  const [added, setAdded] = useState<string | null>(null)
  const [rolesMissing, setRolesMissing] = useState(false)

  async function add(event: FormEvent<HTMLFormElement>) {
    event.preventDefault()
    if (state === 'sending') return
    const element = event.currentTarget
    const form = new FormData(element)
    const displayName = textOf(form, 'displayName')
    const roles = rolesOf(form, teams)
    setAdded(null)
    setRolesMissing(roles.length === 0)
    if (roles.length === 0) return
    const outcome = await send({
      method: 'POST',
      path: pathTo(paths.people, { clubId }),
      body: { id, displayName, roles },
    })
    if (!outcome.ok) return
    setAdded(displayName)
    setId(newUuid())
    element.reset()
    router.refresh()
  }

  return (
    <form onSubmit={add} className="flex flex-col gap-5">
      <TextField
        name="displayName"
        label={peopleMessage('name')}
        hint={peopleMessage('nameHint')}
        wrong={wrongAt(failure, '/displayName')}
        required
        maxLength={60}
        autoComplete="off"
      />
      <PersonRoles teams={teams} held={[]} />
      {rolesMissing && (
        <p role="alert" className="font-semibold">
          {peopleMessage('rolesMissing')}
        </p>
      )}
      <FailureNotice failure={failure} />
      <div>
        <Button type="submit" kind="next" aria-busy={state === 'sending'}>
          {peopleMessage(state === 'sending' ? 'adding' : 'add')}
        </Button>
      </div>
      <Status>{added === null ? null : peopleMessage('added', { name: added })}</Status>
    </form>
  )
}

import type { Person } from '@espalier/contract/people'
import type { Team } from '@espalier/contract/places'
import Link from 'next/link'
import { peopleMessage } from '../../messages/people'
import { pages, pageTo } from '../../paths'
import { roleWords } from '../../shell/role-words'
import { type Column, Table } from '../../ui/table/table'
import { MakeLink } from './make-link'

type PeopleTableProps = {
  readonly clubId: string
  readonly people: readonly Person[]
  readonly teams: readonly Pick<Team, 'teamId' | 'name'>[]
  readonly mayChange: boolean
}

const SIGN_IN_WORDS = {
  'no-link': 'noLink',
  'link-waiting': 'linkWaiting',
  'has-signed-in': 'hasSignedIn',
} as const satisfies Record<NonNullable<Person['signIn']>, string>

function signInWords({ left, signIn }: Person): string {
  if (left) return peopleMessage('left')
  return signIn === null ? '' : peopleMessage(SIGN_IN_WORDS[signIn])
}

export function PeopleTable({ clubId, people, teams, mayChange }: PeopleTableProps) {
  const teamName = (teamId: string | null) => teams.find((team) => team.teamId === teamId)?.name ?? null
  const columns: readonly Column<Person>[] = [
    { title: peopleMessage('columnName'), namesRow: true, cell: (person) => person.displayName },
    {
      title: peopleMessage('columnRoles'),
      cell: (person) => person.roles.map((role) => roleWords({ ...role, teamName: teamName(role.teamId) })).join(', '),
    },
    ...(mayChange || people.some((person) => person.left)
      ? [{ title: peopleMessage('columnSignIn'), cell: signInWords }]
      : []),
    ...(mayChange
      ? [
          {
            title: peopleMessage('columnDo'),
            cell: (person: Person) => <PersonTasks clubId={clubId} person={person} />,
          },
        ]
      : []),
  ]
  return (
    <Table
      caption={peopleMessage('tableCaption')}
      captionHidden
      columns={columns}
      rows={people}
      rowKey={(person) => person.memberId}
    />
  )
}

function PersonTasks({ clubId, person }: { readonly clubId: string; readonly person: Person }) {
  if (person.left) return null
  return (
    <span className="flex flex-wrap items-center gap-x-4 gap-y-2">
      <MakeLink
        clubId={clubId}
        memberId={person.memberId}
        name={person.displayName}
        again={person.signIn !== 'no-link'}
      />
      <Link
        href={pageTo(pages.person, { clubId, memberId: person.memberId })}
        aria-label={`${peopleMessage('change')}: ${person.displayName}`}
        className="inline-flex min-h-target items-center text-small"
      >
        {peopleMessage('change')}
      </Link>
    </span>
  )
}

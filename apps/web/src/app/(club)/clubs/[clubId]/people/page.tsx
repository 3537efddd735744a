import { paths, pathTo } from '@espalier/contract/paths'
import { people } from '@espalier/contract/people'
import { teams } from '@espalier/contract/places'
import { readFromApi, readMyClub } from '../../../../../api/server'
import { AddPersonForm } from '../../../../../features/people/add-person-form'
import { PeopleTable } from '../../../../../features/people/people-table'
import { peopleMessage } from '../../../../../messages/people'
import { ClubPage } from '../../../../../shell/club-page'

type Props = { readonly params: Promise<{ readonly clubId: string }> }

export default async function PeoplePage({ params }: Props) {
  const { clubId } = await params
  const club = await readMyClub(clubId)
  const [found, teamList] = await Promise.all([
    readFromApi(pathTo(paths.people, { clubId }), people),
    readFromApi(pathTo(paths.teams, { clubId }), teams),
  ])
  const mayChange = club.roles.some(({ role }) => role === 'administrator')
  const teamNames = teamList.teams.map(({ teamId, name }) => ({ teamId, name }))
  return (
    <ClubPage clubId={clubId} title={peopleMessage('title')} lead={peopleMessage('lead')}>
      <PeopleTable clubId={clubId} people={found.people} teams={teamNames} mayChange={mayChange} />
      {mayChange && (
        <section aria-labelledby="add" className="flex flex-col gap-4 border-t border-ink pt-4">
          <h2 id="add" className="text-lead leading-tight font-semibold">
            {peopleMessage('addTitle')}
          </h2>
          <AddPersonForm clubId={clubId} teams={teamNames} />
        </section>
      )}
    </ClubPage>
  )
}

import { paths, pathTo } from '@espalier/contract/paths'
import { people } from '@espalier/contract/people'
import { teams } from '@espalier/contract/places'
import { notFound } from 'next/navigation'
import { readFromApi, readMyClub } from '../../../../../../api/server'
import { EditPersonForm } from '../../../../../../features/people/edit-person-form'
import { peopleMessage } from '../../../../../../messages/people'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly memberId: string }> }

export default async function PersonPage({ params }: Props) {
  const { clubId, memberId } = await params
  const club = await readMyClub(clubId)
  const [found, teamList] = await Promise.all([
    readFromApi(pathTo(paths.people, { clubId }), people),
    readFromApi(pathTo(paths.teams, { clubId }), teams),
  ])
  const person = found.people.find((one) => one.memberId === memberId)
  if (person === undefined || !club.roles.some(({ role }) => role === 'administrator')) notFound()
  return (
    <ClubPage
      clubId={clubId}
      title={peopleMessage('editTitle', { name: person.displayName })}
      crumbs={[{ title: peopleMessage('title'), href: pageTo(pages.people, { clubId }) }]}
    >
      {/* A newer version starts the form anew, so that it never shows one state and sends another. */}
      <EditPersonForm key={person.version} clubId={clubId} person={person} teams={teamList.teams} />
    </ClubPage>
  )
}

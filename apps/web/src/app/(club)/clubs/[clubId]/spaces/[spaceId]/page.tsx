import { paths, pathTo } from '@espalier/contract/paths'
import { spaces } from '@espalier/contract/places'
import { notFound } from 'next/navigation'
import { readFromApi, readMyClub } from '../../../../../../api/server'
import { SpaceEditor } from '../../../../../../features/spaces/space-editor'
import { SpacePicture } from '../../../../../../features/spaces/space-picture'
import { spacesMessage } from '../../../../../../messages/spaces'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly spaceId: string }> }

export default async function SpacePage({ params }: Props) {
  const { clubId, spaceId } = await params
  const club = await readMyClub(clubId)
  const { spaces: rows } = await readFromApi(pathTo(paths.spaces, { clubId }), spaces)
  const row = rows.find((one) => one.spaceId === spaceId)
  if (row === undefined) notFound()
  const mayChange = club.roles.some(({ role }) => role === 'administrator' || role === 'director')
  const name = `${row.space.venue}, ${row.space.name}`
  return (
    <ClubPage
      clubId={clubId}
      title={mayChange ? spacesMessage('editTitle', { name }) : name}
      crumbs={[{ title: spacesMessage('title'), href: pageTo(pages.spaces, { clubId }) }]}
    >
      {mayChange ? (
        // A newer version starts the form anew, so that it never shows one state and sends another.
        <SpaceEditor key={row.version} clubId={clubId} kept={row} />
      ) : (
        <SpacePicture space={row.space} />
      )}
    </ClubPage>
  )
}

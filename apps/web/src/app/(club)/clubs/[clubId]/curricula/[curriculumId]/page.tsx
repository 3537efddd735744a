import { curriculumSummary } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape } from '@espalier/contract/places'
import { formatOf } from '@espalier/domain/formats'
import { readFromApi, readMyClub } from '../../../../../../api/server'
import { VersionsList } from '../../../../../../features/curricula/versions-list'
import { curriculaMessage } from '../../../../../../messages/curricula'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'
import { Section } from '../../../../../../shell/section'
import { ButtonLink } from '../../../../../../ui/button/button-link'
import { EmptyState } from '../../../../../../ui/empty-state/empty-state'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly curriculumId: string }> }

export default async function CurriculumPage({ params }: Props) {
  const { clubId, curriculumId } = await params
  const membership = await readMyClub(clubId)
  const [curriculum, { zone }] = await Promise.all([
    readFromApi(pathTo(paths.curriculum, { clubId, curriculumId }), curriculumSummary),
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
  ])
  const mayWrite = membership.roles.some(({ role }) => role === 'director')
  return (
    <ClubPage
      clubId={clubId}
      title={curriculum.name}
      voice="club"
      crumbs={[{ title: curriculaMessage('title'), href: pageTo(pages.curricula, { clubId }) }]}
      lead={curriculaMessage('gameLine', { age: curriculum.ageGroup, format: formatOf(curriculum.formatId).name })}
      presses={
        curriculum.draftVersion === null ? undefined : (
          <ButtonLink href={pageTo(pages.draft, { clubId, curriculumId })} kind={mayWrite ? 'next' : 'plain'}>
            {curriculaMessage(mayWrite ? 'openDraft' : 'readDraft')}
          </ButtonLink>
        )
      }
    >
      <Section id="versions" title={curriculaMessage('versions')}>
        {curriculum.versions.length === 0 ? (
          <EmptyState>{curriculaMessage('noVersions')}</EmptyState>
        ) : (
          <VersionsList {...{ clubId, curriculumId, zone }} versions={curriculum.versions} />
        )}
      </Section>
    </ClubPage>
  )
}

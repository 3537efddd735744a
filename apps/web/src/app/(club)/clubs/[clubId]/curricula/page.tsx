import { curriculumList } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape } from '@espalier/contract/places'
import { readFromApi, readMyClub } from '../../../../../api/server'
import { AddCurriculumForm } from '../../../../../features/curricula/add-curriculum-form'
import { CurriculaTable } from '../../../../../features/curricula/curricula-table'
import { curriculaMessage } from '../../../../../messages/curricula'
import { ClubPage } from '../../../../../shell/club-page'
import { Section } from '../../../../../shell/section'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'

type Props = { readonly params: Promise<{ readonly clubId: string }> }

export default async function CurriculaPage({ params }: Props) {
  const { clubId } = await params
  const membership = await readMyClub(clubId)
  const [{ curricula }, { zone }] = await Promise.all([
    readFromApi(pathTo(paths.curricula, { clubId }), curriculumList),
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
  ])
  const mayWrite = membership.roles.some(({ role }) => role === 'director')
  return (
    <ClubPage clubId={clubId} title={curriculaMessage('title')} lead={curriculaMessage(mayWrite ? 'lead' : 'leadRead')}>
      {curricula.length === 0 ? (
        <EmptyState>{curriculaMessage(mayWrite ? 'empty' : 'emptyRead')}</EmptyState>
      ) : (
        <CurriculaTable clubId={clubId} zone={zone} curricula={curricula} />
      )}
      {mayWrite && (
        <Section id="begin" title={curriculaMessage('beginTitle')} kind="do">
          <AddCurriculumForm clubId={clubId} />
        </Section>
      )}
    </ClubPage>
  )
}

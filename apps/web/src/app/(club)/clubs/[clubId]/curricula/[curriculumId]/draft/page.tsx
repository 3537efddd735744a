import { curriculumSummary, draftRow, versionRow } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { patternList } from '@espalier/contract/patterns'
import { findFromApi, readFromApi, readMyClub } from '../../../../../../../api/server'
import { DraftRead } from '../../../../../../../features/curricula/draft-read'
import { DraftWriter } from '../../../../../../../features/curricula/draft-writer'
import { curriculaMessage } from '../../../../../../../messages/curricula'
import { pages, pageTo } from '../../../../../../../paths'
import { ClubPage } from '../../../../../../../shell/club-page'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly curriculumId: string }> }

export default async function DraftPage({ params }: Props) {
  const { clubId, curriculumId } = await params
  const membership = await readMyClub(clubId)
  const [draft, curriculum, { patterns }] = await Promise.all([
    readFromApi(pathTo(paths.draft, { clubId, curriculumId }), draftRow),
    readFromApi(pathTo(paths.curriculum, { clubId, curriculumId }), curriculumSummary),
    readFromApi(pathTo(paths.patterns, { clubId }), patternList),
  ])
  const number = Math.max(0, ...curriculum.versions.map((version) => version.number))
  const latest =
    number === 0 ? null : await findFromApi(pathTo(paths.version, { clubId, curriculumId, number }), versionRow)
  const mayWrite = membership.roles.some(({ role }) => role === 'director')
  return (
    <ClubPage
      clubId={clubId}
      title={curriculaMessage('draftTitle', { name: draft.document.name })}
      voice="club"
      crumbs={[
        { title: curriculaMessage('title'), href: pageTo(pages.curricula, { clubId }) },
        { title: curriculum.name, href: pageTo(pages.curriculum, { clubId, curriculumId }) },
      ]}
      lead={
        draft.basedOn === null
          ? curriculaMessage('draftNew')
          : curriculaMessage('draftBasis', { number: draft.basedOn })
      }
    >
      {mayWrite ? (
        <DraftWriter
          clubId={clubId}
          curriculumId={curriculumId}
          saved={{ version: draft.version, document: draft.document }}
          patterns={patterns}
          latest={latest?.content ?? null}
        />
      ) : (
        <DraftRead draft={draft.document} patterns={patterns} />
      )}
    </ClubPage>
  )
}

import { curriculumSummary, draftRow, versionRow } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { patternList, patternRow } from '@espalier/contract/patterns'
import { club as clubShape } from '@espalier/contract/places'
import type { DraftDocument, PatternStanding } from '@espalier/domain/curriculum'
import { findFromApi, readFromApi, readMyClub } from '../../../../../../../api/server'
import { DraftRead } from '../../../../../../../features/curricula/draft-read'
import { DraftWriter } from '../../../../../../../features/curricula/draft-writer'
import { standingOf } from '../../../../../../../features/curricula/pattern-standing'
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
          standings={await listStandings(clubId, draft.document)}
          latest={latest?.content ?? null}
        />
      ) : (
        <DraftRead draft={draft.document} patterns={patterns} />
      )}
    </ClubPage>
  )
}

/** What the check says of each pattern that the draft uses; one that is gone is said of the stage that names it. */
async function listStandings(clubId: string, draft: DraftDocument): Promise<readonly PatternStanding[]> {
  const { settings } = await readFromApi(pathTo(paths.club, { clubId }), clubShape)
  const used = new Set(draft.progressions.flatMap(({ stages }) => stages.map(({ patternId }) => patternId)))
  const rows = await Promise.all(
    [...used].map((patternId) => findFromApi(pathTo(paths.pattern, { clubId, patternId }), patternRow)),
  )
  return rows.flatMap((row) => (row === null ? [] : [standingOf(row, settings)]))
}

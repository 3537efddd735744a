import { paths, pathTo } from '@espalier/contract/paths'
import { patternRow } from '@espalier/contract/patterns'
import { club as clubShape } from '@espalier/contract/places'
import { checkChoicesOf } from '@espalier/domain/check'
import { readFromApi, readMyClub } from '../../../../../../api/server'
import { PatternReader } from '../../../../../../features/pattern-page/pattern-reader'
import { PatternWriter } from '../../../../../../features/pattern-page/pattern-writer'
import { patternsMessage } from '../../../../../../messages/patterns'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'
import { ButtonLink } from '../../../../../../ui/button/button-link'

type Props = {
  readonly params: Promise<{ readonly clubId: string; readonly patternId: string }>
  readonly searchParams: Promise<{ readonly view?: string | readonly string[] }>
}

export default async function PatternPage({ params, searchParams }: Props) {
  const { clubId, patternId } = await params
  const { view } = await searchParams
  const membership = await readMyClub(clubId)
  const [row, club] = await Promise.all([
    readFromApi(pathTo(paths.pattern, { clubId, patternId }), patternRow),
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
  ])
  const { version, document } = row
  const choices = checkChoicesOf(club.settings)
  const mayWrite = membership.roles.some(({ role }) => role === 'director')
  const isWriting = mayWrite && view !== 'read'
  const other = pageTo(pages.pattern, { clubId, patternId }, isWriting ? { view: 'read' } : {})
  return (
    <ClubPage
      clubId={clubId}
      title={document.title}
      voice="club"
      crumbs={[{ title: patternsMessage('title'), href: pageTo(pages.patterns, { clubId }) }]}
      presses={
        mayWrite ? (
          <ButtonLink href={other} kind="quiet">
            {patternsMessage(isWriting ? 'readIt' : 'changeIt')}
          </ButtonLink>
        ) : undefined
      }
    >
      {isWriting ? (
        <PatternWriter clubId={clubId} patternId={patternId} saved={{ version, document }} choices={choices} />
      ) : (
        <PatternReader document={document} choices={choices} isPressureShown />
      )}
    </ClubPage>
  )
}

import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape } from '@espalier/contract/places'
import { checkChoicesOf } from '@espalier/domain/check'
import { notFound } from 'next/navigation'
import { readFromApi, readMyClub } from '../../../../../../api/server'
import { blankPattern } from '../../../../../../features/pattern-page/blank-pattern'
import { PatternWriter } from '../../../../../../features/pattern-page/pattern-writer'
import { patternsMessage } from '../../../../../../messages/patterns'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'

type Props = { readonly params: Promise<{ readonly clubId: string }> }

export default async function NewPatternPage({ params }: Props) {
  const { clubId } = await params
  const membership = await readMyClub(clubId)
  if (!membership.roles.some(({ role }) => role === 'director')) notFound()
  const { settings } = await readFromApi(pathTo(paths.club, { clubId }), clubShape)
  return (
    <ClubPage
      clubId={clubId}
      title={patternsMessage('newTitle')}
      crumbs={[{ title: patternsMessage('title'), href: pageTo(pages.patterns, { clubId }) }]}
    >
      <PatternWriter
        clubId={clubId}
        patternId={null}
        saved={{ version: null, document: blankPattern('us-7v7', 'U10') }}
        choices={checkChoicesOf(settings)}
      />
    </ClubPage>
  )
}

import { paths, pathTo } from '@espalier/contract/paths'
import { patternList } from '@espalier/contract/patterns'
import Link from 'next/link'
import { findFromApi, readMyClub } from '../../../../../api/server'
import { FindPatterns } from '../../../../../features/pattern-page/find-patterns'
import { findPatterns, PatternsTable } from '../../../../../features/pattern-page/patterns-table'
import { patternsMessage } from '../../../../../messages/patterns'
import { pages, pageTo } from '../../../../../paths'
import { ClubPage } from '../../../../../shell/club-page'
import { ButtonLink } from '../../../../../ui/button/button-link'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'

type Props = {
  readonly params: Promise<{ readonly clubId: string }>
  readonly searchParams: Promise<{ readonly find?: string | readonly string[] }>
}

/** From so many patterns on, looking through the list takes longer than typing a word. */
const FIND_FROM = 8

export default async function PatternsPage({ params, searchParams }: Props) {
  const { clubId } = await params
  const { find } = await searchParams
  const club = await readMyClub(clubId)
  const found = await findFromApi(pathTo(paths.patterns, { clubId }), patternList)
  const mayWrite = club.roles.some(({ role }) => role === 'director')
  const words = typeof find === 'string' ? find.trim() : ''
  const patterns = found?.patterns ?? []
  const shown = findPatterns(patterns, words)
  const write = <ButtonLink href={pageTo(pages.newPattern, { clubId })}>{patternsMessage('write')}</ButtonLink>
  return (
    <ClubPage
      clubId={clubId}
      title={patternsMessage('title')}
      lead={patternsMessage('lead')}
      presses={mayWrite && patterns.length > 0 ? write : undefined}
    >
      {found === null && (
        <EmptyState
          next={<ButtonLink href={pageTo(pages.curricula, { clubId })}>{patternsMessage('goCurricula')}</ButtonLink>}
        >
          {patternsMessage('publishedOnly')}
        </EmptyState>
      )}
      {found !== null && patterns.length === 0 && (
        <EmptyState next={mayWrite ? write : undefined}>{patternsMessage(mayWrite ? 'empty' : 'emptyRead')}</EmptyState>
      )}
      {patterns.length >= FIND_FROM && <FindPatterns words={words} />}
      {patterns.length > 0 && shown.length === 0 && (
        <EmptyState next={<Link href={pageTo(pages.patterns, { clubId })}>{patternsMessage('findAll')}</Link>}>
          {patternsMessage('findNothing', { words })}
        </EmptyState>
      )}
      {shown.length > 0 && <PatternsTable clubId={clubId} patterns={shown} />}
    </ClubPage>
  )
}

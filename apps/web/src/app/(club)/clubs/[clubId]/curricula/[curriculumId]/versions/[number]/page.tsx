import { curriculumList, versionRow } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape, teams as teamsShape } from '@espalier/contract/places'
import { notFound } from 'next/navigation'
import { findFromApi, readFromApi, readMyClub } from '../../../../../../../../api/server'
import { AdoptForm } from '../../../../../../../../features/curricula/adopt-form'
import { contentWords, VersionContentRead } from '../../../../../../../../features/curricula/version-content'
import { followersOf, teamsToMove } from '../../../../../../../../features/curricula/version-words'
import { VersionSeal } from '../../../../../../../../features/curricula/versions-list'
import { curriculaMessage } from '../../../../../../../../messages/curricula'
import { pages, pageTo } from '../../../../../../../../paths'
import { ClubPage } from '../../../../../../../../shell/club-page'
import { dateWords, todayIn } from '../../../../../../../../shell/dates'
import { Section } from '../../../../../../../../shell/section'

type Props = {
  readonly params: Promise<{ readonly clubId: string; readonly curriculumId: string; readonly number: string }>
}

export default async function VersionPage({ params }: Props) {
  const { clubId, curriculumId, number } = await params
  // The API answers no page with a number it cannot read.
  if (!/^[1-9]\d{0,5}$/.test(number)) notFound()
  const membership = await readMyClub(clubId)
  const [{ summary, content }, club, teamList, { curricula }] = await Promise.all([
    readFromApi(pathTo(paths.version, { clubId, curriculumId, number }), versionRow),
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
    findFromApi(pathTo(paths.teams, { clubId }), teamsShape),
    readFromApi(pathTo(paths.curricula, { clubId }), curriculumList),
  ])
  const teams = teamList?.teams ?? []
  const followers = followersOf(teams, curriculumId, summary.number)
  const movable = teamsToMove(teams, membership.roles, club.settings.coachesAdopt)
  return (
    <ClubPage
      clubId={clubId}
      title={curriculaMessage('versionTitle', { name: content.name, number: summary.number })}
      voice="club"
      crumbs={[
        { title: curriculaMessage('title'), href: pageTo(pages.curricula, { clubId }) },
        { title: content.name, href: pageTo(pages.curriculum, { clubId, curriculumId }) },
      ]}
      lead={contentWords(content)}
    >
      <VersionSeal version={summary} clubId={clubId} zone={club.zone} />
      <Section id="followers" title={curriculaMessage('followers')}>
        {followers.length === 0 && <p className="text-ink-soft">{curriculaMessage('noFollowers')}</p>}
        {followers.map(({ teamId, name, follows }) => (
          <p key={teamId}>
            {follows !== null &&
              curriculaMessage('follower', { team: name, number: follows.number, date: dateWords(follows.fromDate) })}
          </p>
        ))}
      </Section>
      {movable.length > 0 && (
        <Section id="adopt" title={curriculaMessage('adoptTitle')} kind="do">
          {summary.offered ? (
            <AdoptForm
              {...{ clubId, curriculumId }}
              number={summary.number}
              teams={movable}
              names={Object.fromEntries(curricula.map((each) => [each.curriculumId, each.name]))}
              today={todayIn(club.zone)}
            />
          ) : (
            <p>{curriculaMessage('adoptOld')}</p>
          )}
        </Section>
      )}
      <VersionContentRead content={content} />
    </ClubPage>
  )
}

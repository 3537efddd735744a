import { paths, pathTo } from '@espalier/contract/paths'
import { type Season, seasons, type Team, teams } from '@espalier/contract/places'
import Link from 'next/link'
import { readFromApi, readMyClub } from '../../../../../api/server'
import { AddSeasonForm } from '../../../../../features/teams/add-season-form'
import { AddTeamForm } from '../../../../../features/teams/add-team-form'
import { formatName } from '../../../../../features/teams/format-choices'
import { teamsMessage } from '../../../../../messages/teams'
import { pages, pageTo } from '../../../../../paths'
import { ClubPage } from '../../../../../shell/club-page'
import { dateWords } from '../../../../../shell/dates'
import { Section } from '../../../../../shell/section'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'
import { type Column, Table } from '../../../../../ui/table/table'

type Props = { readonly params: Promise<{ readonly clubId: string }> }

export default async function TeamsPage({ params }: Props) {
  const { clubId } = await params
  const club = await readMyClub(clubId)
  const [seasonList, teamList] = await Promise.all([
    readFromApi(pathTo(paths.seasons, { clubId }), seasons),
    readFromApi(pathTo(paths.teams, { clubId }), teams),
  ])
  const mayChange = club.roles.some(({ role }) => role === 'administrator')
  return (
    <ClubPage clubId={clubId} title={teamsMessage('title')} lead={teamsMessage('lead')}>
      <Section id="teams" title={teamsMessage('teams')}>
        {teamList.teams.length === 0 ? (
          <EmptyState>{teamsMessage('noTeams')}</EmptyState>
        ) : (
          <Table
            caption={teamsMessage('teamCaption')}
            captionHidden
            columns={teamColumns(clubId, seasonList.seasons)}
            rows={teamList.teams}
            rowKey={(team) => team.teamId}
          />
        )}
      </Section>
      <Section id="seasons" title={teamsMessage('seasons')}>
        {seasonList.seasons.length === 0 ? (
          <EmptyState>{teamsMessage('noSeasons')}</EmptyState>
        ) : (
          <Table
            caption={teamsMessage('seasonCaption')}
            captionHidden
            columns={seasonColumns}
            rows={seasonList.seasons}
            rowKey={(season) => season.seasonId}
          />
        )}
      </Section>
      {mayChange && seasonList.seasons.length > 0 && (
        <Section id="add-team" title={teamsMessage('addTeam')} kind="do">
          <AddTeamForm clubId={clubId} seasons={seasonList.seasons} />
        </Section>
      )}
      {mayChange && (
        <Section id="add-season" title={teamsMessage('addSeason')} kind="do">
          <AddSeasonForm clubId={clubId} />
        </Section>
      )}
    </ClubPage>
  )
}

const seasonColumns: readonly Column<Season>[] = [
  { title: teamsMessage('seasonName'), namesRow: true, cell: (season) => season.name },
  { title: teamsMessage('firstDay'), cell: (season) => dateWords(season.firstDay) },
  { title: teamsMessage('lastDay'), cell: (season) => dateWords(season.lastDay) },
]

function teamColumns(clubId: string, seasonList: readonly Season[]): readonly Column<Team>[] {
  return [
    {
      title: teamsMessage('teamName'),
      namesRow: true,
      cell: (team) => (
        <Link
          href={pageTo(pages.team, { clubId, teamId: team.teamId })}
          className="inline-flex min-h-target items-center"
        >
          {team.name}
        </Link>
      ),
    },
    { title: teamsMessage('ageGroup'), cell: (team) => `${team.ageGroup}, ${teamsMessage(team.category)}` },
    { title: teamsMessage('format'), cell: (team) => formatName(team.formatId) },
    {
      title: teamsMessage('season'),
      cell: (team) => seasonList.find((season) => season.seasonId === team.seasonId)?.name ?? '',
    },
    { title: teamsMessage('squad'), align: 'end', cell: (team) => team.squadSize },
    {
      title: teamsMessage('follows'),
      cell: ({ follows }) =>
        follows === null
          ? teamsMessage('followsNothing')
          : teamsMessage('followsVersion', { number: follows.number, date: dateWords(follows.fromDate) }),
    },
  ]
}

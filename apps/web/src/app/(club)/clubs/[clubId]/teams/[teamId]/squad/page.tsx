import { paths, pathTo } from '@espalier/contract/paths'
import { teams } from '@espalier/contract/places'
import { type Player, squad } from '@espalier/contract/squads'
import { notFound } from 'next/navigation'
import { readFromApi, readMyClub } from '../../../../../../../api/server'
import { ImportSquad } from '../../../../../../../features/squad/import-squad'
import { squadMessage } from '../../../../../../../messages/squad'
import { teamsMessage } from '../../../../../../../messages/teams'
import { pages, pageTo } from '../../../../../../../paths'
import { ClubPage } from '../../../../../../../shell/club-page'
import { Section } from '../../../../../../../shell/section'
import { EmptyState } from '../../../../../../../ui/empty-state/empty-state'
import { type Column, Table } from '../../../../../../../ui/table/table'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly teamId: string }> }

export default async function SquadPage({ params }: Props) {
  const { clubId, teamId } = await params
  const club = await readMyClub(clubId)
  const [teamList, found] = await Promise.all([
    readFromApi(pathTo(paths.teams, { clubId }), teams),
    readFromApi(pathTo(paths.squad, { clubId, teamId }), squad),
  ])
  const team = teamList.teams.find((one) => one.teamId === teamId)
  if (team === undefined) notFound()
  const mayChange = club.roles.some(
    ({ role, teamId: own }) => role === 'administrator' || (role === 'coach' && own === teamId),
  )
  const seesNames = found.players.some(({ shortName }) => shortName !== null)
  return (
    <ClubPage
      clubId={clubId}
      title={squadMessage('title', { team: team.name })}
      lead={squadMessage('lead')}
      crumbs={[
        { title: teamsMessage('title'), href: pageTo(pages.teams, { clubId }) },
        { title: team.name, href: pageTo(pages.team, { clubId, teamId }) },
      ]}
    >
      {found.count === 0 ? (
        <EmptyState>{squadMessage('empty')}</EmptyState>
      ) : (
        <>
          {!seesNames && <p>{squadMessage('counts', { count: found.count })}</p>}
          {found.players.length > 0 && (
            <Table
              caption={squadMessage('caption')}
              captionHidden
              columns={columnsFor(found.players)}
              rows={found.players}
              rowKey={(player) => player.playerId}
            />
          )}
        </>
      )}
      {mayChange && (
        <Section id="import" title={squadMessage('importTitle')} kind="do">
          <ImportSquad clubId={clubId} teamId={teamId} squad={found.players} />
        </Section>
      )}
    </ClubPage>
  )
}

function columnsFor(players: readonly Player[]): readonly Column<Player>[] {
  const numberOf = (player: Player) => players.indexOf(player) + 1
  return [
    {
      title: squadMessage('shortName'),
      namesRow: true,
      cell: (player) => player.shortName ?? squadMessage('unnamed', { number: numberOf(player) }),
    },
    { title: squadMessage('shirt'), align: 'end', cell: (player) => player.shirt ?? squadMessage('none') },
    { title: squadMessage('home'), cell: (player) => player.home ?? squadMessage('none') },
    { title: squadMessage('stretch'), cell: (player) => player.stretch ?? squadMessage('none') },
    { title: squadMessage('goalkeeper'), cell: (player) => squadMessage(player.goalkeeper) },
    { title: squadMessage('foot'), cell: (player) => squadMessage(player.foot) },
  ]
}

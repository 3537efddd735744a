import { versionRow } from '@espalier/contract/curricula'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape, seasons, slots, spaces, teams, trainingDates } from '@espalier/contract/places'
import { notFound } from 'next/navigation'
import { findFromApi, readFromApi, readMyClub } from '../../../../../../api/server'
import { AddSlotForm } from '../../../../../../features/teams/add-slot-form'
import { formatName } from '../../../../../../features/teams/format-choices'
import { ReachForm } from '../../../../../../features/teams/reach-form'
import { DateTable, SlotTable } from '../../../../../../features/teams/slot-tables'
import { TeamReach } from '../../../../../../features/teams/team-reach'
import { teamsMessage } from '../../../../../../messages/teams'
import { pages, pageTo } from '../../../../../../paths'
import { ClubPage } from '../../../../../../shell/club-page'
import { todayIn } from '../../../../../../shell/dates'
import { Section } from '../../../../../../shell/section'
import { ButtonLink } from '../../../../../../ui/button/button-link'

type Props = { readonly params: Promise<{ readonly clubId: string; readonly teamId: string }> }

export default async function TeamPage({ params }: Props) {
  const { clubId, teamId } = await params
  const membership = await readMyClub(clubId)
  const [club, teamList, seasonList, spaceList, slotList, dateList] = await Promise.all([
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
    readFromApi(pathTo(paths.teams, { clubId }), teams),
    readFromApi(pathTo(paths.seasons, { clubId }), seasons),
    findFromApi(pathTo(paths.spaces, { clubId }), spaces),
    readFromApi(pathTo(paths.slots, { clubId, teamId }), slots),
    readFromApi(pathTo(paths.dates, { clubId, teamId }), trainingDates),
  ])
  const team = teamList.teams.find((one) => one.teamId === teamId)
  const season = seasonList.seasons.find((one) => one.seasonId === team?.seasonId)
  if (team === undefined || season === undefined) notFound()
  const followed =
    team.follows === null ? null : await findFromApi(pathTo(paths.version, { clubId, ...team.follows }), versionRow)
  const spaceRows = spaceList?.spaces ?? []
  const mayChange = membership.roles.some(({ role }) => role === 'administrator' || role === 'director')
  const mayMeasure = membership.roles.some(
    ({ role, teamId: own }) => role === 'director' || (role === 'coach' && own === teamId),
  )
  return (
    <ClubPage
      clubId={clubId}
      title={team.name}
      crumbs={[{ title: teamsMessage('title'), href: pageTo(pages.teams, { clubId }) }]}
      lead={teamsMessage('teamLead', {
        ageGroup: team.ageGroup,
        category: teamsMessage(team.category),
        format: formatName(team.formatId),
        season: season.name,
      })}
      presses={<ButtonLink href={pageTo(pages.squad, { clubId, teamId })}>{teamsMessage('openSquad')}</ButtonLink>}
    >
      <Section id="slots" title={teamsMessage('slots')}>
        <SlotTable slots={slotList.slots} spaces={spaceRows} zone={club.zone} />
      </Section>
      <Section id="dates" title={teamsMessage('dates')}>
        <DateTable dates={dateList.dates} spaces={spaceRows} zone={club.zone} />
      </Section>
      <Section id="reach" title={teamsMessage('reach')}>
        <TeamReach reach={team.reach} content={followed?.content ?? null} />
      </Section>
      {mayMeasure && (
        <Section id="measure" title={teamsMessage('reachWrite')} kind="do">
          <ReachForm clubId={clubId} teamId={teamId} reach={team.reach} today={todayIn(club.zone)} />
        </Section>
      )}
      {mayChange && (
        <Section id="add-slot" title={teamsMessage('addSlot')} kind="do">
          <AddSlotForm clubId={clubId} teamId={teamId} season={season} spaces={spaceRows} />
        </Section>
      )}
    </ClubPage>
  )
}

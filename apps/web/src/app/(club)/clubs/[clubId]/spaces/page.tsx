import { paths, pathTo } from '@espalier/contract/paths'
import { equipment, type SpaceRow, spaces, type Team, teams } from '@espalier/contract/places'
import { EQUIPMENT_KINDS } from '@espalier/domain/session'
import Link from 'next/link'
import { readFromApi, readMyClub } from '../../../../../api/server'
import { CountEquipmentForm } from '../../../../../features/spaces/count-equipment-form'
import { SpaceEditor } from '../../../../../features/spaces/space-editor'
import { formatName } from '../../../../../features/teams/format-choices'
import { spacesMessage } from '../../../../../messages/spaces'
import { pages, pageTo } from '../../../../../paths'
import { ClubPage } from '../../../../../shell/club-page'
import { Section } from '../../../../../shell/section'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'
import { type Column, Table } from '../../../../../ui/table/table'

type Props = { readonly params: Promise<{ readonly clubId: string }> }

export default async function SpacesPage({ params }: Props) {
  const { clubId } = await params
  const club = await readMyClub(clubId)
  const [spaceList, owners, teamList] = await Promise.all([
    readFromApi(pathTo(paths.spaces, { clubId }), spaces),
    readFromApi(pathTo(paths.equipment, { clubId }), equipment),
    readFromApi(pathTo(paths.teams, { clubId }), teams),
  ])
  const roles = club.roles.map(({ role }) => role)
  const maySpaces = roles.includes('administrator') || roles.includes('director')
  return (
    <ClubPage clubId={clubId} title={spacesMessage('title')} lead={spacesMessage('lead')}>
      <Section id="spaces" title={spacesMessage('spaces')}>
        {spaceList.spaces.length === 0 ? (
          <EmptyState>{spacesMessage('empty')}</EmptyState>
        ) : (
          <Table
            caption={spacesMessage('caption')}
            captionHidden
            columns={spaceColumns(clubId)}
            rows={spaceList.spaces}
            rowKey={(row) => row.spaceId}
          />
        )}
      </Section>
      <Section id="equipment" title={spacesMessage('equipment')}>
        <p className="max-w-text text-ink-soft">{spacesMessage('equipmentLead')}</p>
        {owners.owners.length === 0 ? (
          <EmptyState>{spacesMessage('noEquipment')}</EmptyState>
        ) : (
          <Table
            caption={spacesMessage('equipmentCaption')}
            captionHidden
            columns={equipmentColumns(teamList.teams)}
            rows={owners.owners}
            rowKey={(row) => row.teamId ?? 'club'}
          />
        )}
      </Section>
      {maySpaces && (
        <Section id="measure" title={spacesMessage('add')} kind="do">
          <SpaceEditor clubId={clubId} />
        </Section>
      )}
      {roles.includes('administrator') && (
        <Section id="count" title={spacesMessage('count')} kind="do">
          <CountEquipmentForm clubId={clubId} teams={teamList.teams} owners={owners.owners} />
        </Section>
      )}
    </ClubPage>
  )
}

function metresOneDecimal(lengthMm: number): string {
  return (lengthMm / 1000).toFixed(1)
}

function spaceColumns(clubId: string): readonly Column<SpaceRow>[] {
  return [
    {
      title: spacesMessage('name'),
      namesRow: true,
      cell: ({ spaceId, space }) => (
        <Link href={pageTo(pages.space, { clubId, spaceId })} className="inline-flex min-h-target items-center">
          {space.venue}, {space.name}
        </Link>
      ),
    },
    { title: spacesMessage('covers'), cell: ({ space }) => spacesMessage(space.covers) },
    {
      title: spacesMessage('size'),
      cell: ({ space }) =>
        spacesMessage('sizeWords', {
          length: metresOneDecimal(space.lengthMm),
          width: metresOneDecimal(space.widthMm),
        }),
    },
    { title: spacesMessage('format'), cell: ({ space }) => formatName(space.formatId) },
  ]
}

type EquipmentRow = { readonly teamId: string | null; readonly counts: Readonly<Record<string, number>> }

function equipmentColumns(teamList: readonly Team[]): readonly Column<EquipmentRow>[] {
  return [
    {
      title: spacesMessage('owner'),
      namesRow: true,
      cell: ({ teamId }) =>
        teamId === null
          ? spacesMessage('clubStore')
          : (teamList.find((team) => team.teamId === teamId)?.name ?? spacesMessage('owner')),
    },
    ...EQUIPMENT_KINDS.map(
      (kind): Column<EquipmentRow> => ({
        title: spacesMessage(kind),
        align: 'end',
        cell: ({ counts }) => counts[kind] ?? 0,
      }),
    ),
  ]
}

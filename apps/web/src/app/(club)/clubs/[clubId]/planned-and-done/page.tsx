import { type CoverageCell, coverage, coverageCell } from '@espalier/contract/coverage'
import { ledgerHead } from '@espalier/contract/ledger'
import { paths, pathTo } from '@espalier/contract/paths'
import { club as clubShape, type Season, seasons } from '@espalier/contract/places'
import Link from 'next/link'
import { findFromApi, readFromApi } from '../../../../../api/server'
import { type Cell, trellisesOf } from '../../../../../features/coverage/team-trellis'
import { TeamWeeks } from '../../../../../features/coverage/team-weeks'
import { BarLegend } from '../../../../../features/coverage/week-bar'
import { WeekEvidence } from '../../../../../features/coverage/week-evidence'
import { coverageMessage } from '../../../../../messages/coverage'
import { pages, pageTo } from '../../../../../paths'
import { ClubPage } from '../../../../../shell/club-page'
import { dateWords, mondayOf, todayIn } from '../../../../../shell/dates'
import { Section } from '../../../../../shell/section'
import { EmptyState } from '../../../../../ui/empty-state/empty-state'

type Query = Readonly<Record<string, string | readonly string[] | undefined>>
type Props = {
  readonly params: Promise<{ readonly clubId: string }>
  readonly searchParams: Promise<Query>
}

export default async function CoveragePage({ params, searchParams }: Props) {
  const { clubId } = await params
  const query = await searchParams
  const [club, seasonList] = await Promise.all([
    readFromApi(pathTo(paths.club, { clubId }), clubShape),
    readFromApi(pathTo(paths.seasons, { clubId }), seasons),
  ])
  const season = chooseSeason(seasonList.seasons, textOf(query, 'season'), todayIn(club.zone))
  if (season === null) {
    return (
      <ClubPage clubId={clubId} title={coverageMessage('title')} lead={coverageMessage('lead')}>
        <EmptyState>{coverageMessage('noSeason')}</EmptyState>
      </ClubPage>
    )
  }
  const { seasonId } = season
  const found = await readFromApi(pathTo(paths.coverage, { clubId }, { seasonId }), coverage)
  const open = openCellOf(query)
  const evidence = open === null ? null : await readEvidence(clubId, { seasonId, ...open })
  const closeHref = pageTo(pages.coverage, { clubId }, { season: seasonId })
  const trellises = trellisesOf(found)
  return (
    <ClubPage clubId={clubId} title={coverageMessage('title')} lead={coverageMessage('lead')}>
      <SeasonLine clubId={clubId} season={season} all={seasonList.seasons} />
      {evidence !== null && <WeekEvidence clubId={clubId} zone={club.zone} closeHref={closeHref} {...evidence} />}
      {trellises.length === 0 && <EmptyState>{coverageMessage('nothing')}</EmptyState>}
      {trellises.length > 0 && <BarLegend words={legendWords} />}
      {trellises.map((trellis) => (
        <Section key={trellis.teamId} id={`team-${trellis.teamId}`} title={trellis.name}>
          <TeamWeeks
            trellis={trellis}
            thisWeek={mondayOf(todayIn(club.zone))}
            open={open}
            cellHref={({ teamId, stageId, week }) =>
              `${pageTo(pages.coverage, { clubId }, { season: seasonId, team: teamId, stage: stageId, week })}#week`
            }
          />
        </Section>
      ))}
    </ClubPage>
  )
}

const legendWords = [
  coverageMessage('legendDone'),
  coverageMessage('legendPlan'),
  coverageMessage('legendToCome'),
  coverageMessage('legendMissed'),
  coverageMessage('legendLate'),
] as const

async function readEvidence(clubId: string, cell: { seasonId: string } & Pick<Cell, 'teamId' | 'stageId' | 'week'>) {
  const { seasonId, teamId, stageId, week } = cell
  const path = pathTo(paths.coverageCell, { clubId }, { seasonId, teamId, stageId, week })
  const [evidence, head] = await Promise.all([
    findFromApi<CoverageCell>(path, coverageCell),
    readFromApi(pathTo(paths.ledgerHead, { clubId }), ledgerHead),
  ])
  return evidence === null ? null : { evidence, head }
}

/** The season asked for, else the one that holds today, else the latest one. */
function chooseSeason(all: readonly Season[], asked: string | null, today: string): Season | null {
  const latest = [...all].sort((a, b) => (a.firstDay < b.firstDay ? 1 : -1))
  return (
    latest.find(({ seasonId }) => seasonId === asked) ??
    latest.find(({ firstDay, lastDay }) => firstDay <= today && today <= lastDay) ??
    latest[0] ??
    null
  )
}

function textOf(query: Query, name: string): string | null {
  const value = query[name]
  return typeof value === 'string' ? value : null
}

const ID = /^[0-9a-f-]{36}$/
const DAY = /^\d{4}-\d{2}-\d{2}$/

function openCellOf(query: Query): Pick<Cell, 'teamId' | 'stageId' | 'week'> | null {
  const teamId = textOf(query, 'team')
  const stageId = textOf(query, 'stage')
  const week = textOf(query, 'week')
  if (teamId === null || stageId === null || week === null) return null
  if (!ID.test(teamId) || !ID.test(stageId) || !DAY.test(week)) return null
  return { teamId, stageId, week: week as Cell['week'] }
}

type SeasonLineProps = { readonly clubId: string; readonly season: Season; readonly all: readonly Season[] }

function SeasonLine({ clubId, season, all }: SeasonLineProps) {
  const others = all.filter(({ seasonId }) => seasonId !== season.seasonId)
  return (
    <div className="flex flex-wrap items-center gap-x-6">
      <p className="font-semibold">
        {coverageMessage('season', {
          name: season.name,
          from: dateWords(season.firstDay),
          to: dateWords(season.lastDay),
        })}
      </p>
      {others.length > 0 && (
        <nav aria-label={coverageMessage('otherSeasons')} className="flex flex-wrap gap-x-4">
          {others.map(({ seasonId, name }) => (
            <Link
              key={seasonId}
              href={pageTo(pages.coverage, { clubId }, { season: seasonId })}
              className="inline-flex min-h-target items-center"
            >
              {name}
            </Link>
          ))}
        </nav>
      )}
    </div>
  )
}

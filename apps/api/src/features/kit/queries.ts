import type { Member } from '@espalier/domain/access'
import type { FormatId } from '@espalier/domain/formats'
import type { Space } from '@espalier/domain/pitch'
import type { EquipmentKind, MeasuredReach } from '@espalier/domain/session'
import type { ClubDb } from '../../db/with-club'

export type KitRow = {
  readonly club_name: string
  readonly zone: string
  readonly demo: boolean
  readonly team: { name: string; ageGroup: string; formatId: FormatId; seasonId: string; reach: MeasuredReach | null }
  readonly adults: { memberId: string; displayName: string }[]
  readonly dates: {
    dateId: string
    startsAt: number
    endsAt: number
    localDate: string
    spaceId: string | null
    state: 'on' | 'cancelled' | 'moved'
    reported: boolean
  }[]
  readonly spaces: { spaceId: string; space: Space }[]
  readonly equipment: { owner: string; kind: EquipmentKind; count: number }[]
  readonly squad: {
    playerId: string
    sealed: string | null
    wrapped: string | null
    shirt: number | null
    home: string | null
    stretch: string | null
    goalkeeper: 'yes' | 'sometimes' | 'no'
    foot: 'left' | 'right' | 'both'
    left: number
    right: number
  }[]
  readonly progress: {
    stageId: string
    sessions: number
    lastDate: string
    attemptsLeft: number
    attemptsRight: number
    gotOutLeft: number
    gotOutRight: number
  }[]
  readonly adopted: { curriculumId: string; number: number; contentHash: string } | null
  /** The next instant at which the same question has another answer, though nobody does anything. */
  readonly valid_until: Date
}

export type KitAsker = {
  readonly memberId: string
  readonly roles: Member['roles']
  readonly hasTeam: boolean
  readonly bookSize: number
}

type KitAskerRow = {
  readonly member_id: string
  readonly roles: readonly `${Member['roles'][number]['role']}/${string}`[]
  readonly has_team: boolean
  readonly book_size: number
}

/**
 * Who asks, and how long the club's record book is. No row: the account is no member here. Every reading of a kit asks
 * this, so it is kept to what the database answers fastest: roles come as text, joined by a stroke.
 */
export async function findKitAsker(db: ClubDb, accountId: string, teamId: string): Promise<KitAsker | null> {
  const [row] = await db.sql.rows<KitAskerRow>({
    name: 'find-kit-asker',
    text: `select m.member_id, h.size as book_size,
             exists (select from team t where t.club_id = $1 and t.team_id = $3 and t.retired_at is null) as has_team,
             array(select r.role || '/' || coalesce(r.team_id::text, '')
                   from member_role r where r.club_id = $1 and r.member_id = m.member_id) as roles
           from membership m join ledger_head h on h.club_id = $1
           where m.club_id = $1 and m.account_id = $2 and m.ended_at is null`,
    values: [db.clubId, accountId, teamId],
  })
  if (row === undefined) return null
  const { member_id: memberId, has_team: hasTeam, book_size: bookSize } = row
  return { memberId, hasTeam, bookSize, roles: row.roles.map(roleOf) }
}

function roleOf(text: KitAskerRow['roles'][number]): Member['roles'][number] {
  const [role, teamId] = text.split('/') as [Member['roles'][number]['role'], string]
  return { role, teamId: teamId === '' ? null : teamId }
}

/** Everything of a kit but the frozen version, in one statement. The team is known to exist. */
export async function findKitRow(db: ClubDb, teamId: string, now: number): Promise<KitRow> {
  const rows = await db.sql.rows<KitRow>({
    name: 'find-kit',
    text: KIT,
    values: [db.clubId, teamId, new Date(now), new Date(now + KIT_DAYS * 86_400_000)],
  })
  return rows[0]!
}

/** A phone carries the dates of the next two weeks, and the last one for its report. */
const KIT_DAYS = 14

// Every space of the club and not only the team's own: tonight a coach may be sent to another one, without a network, and
// a space tells of nobody.
const KIT = `
select c.name as club_name, c.zone, c.demo,
  least(
    (select min(d.ends_at) from training_date d where d.club_id = $1 and d.team_id = $2 and d.ends_at > $3),
    (select min(d.starts_at) - ($4::timestamptz - $3::timestamptz)
     from training_date d where d.club_id = $1 and d.team_id = $2 and d.starts_at > $4),
    (date_trunc('day', $3::timestamptz at time zone c.zone) + interval '1 day') at time zone c.zone) as valid_until,
  (select json_build_object('name', t.name, 'ageGroup', t.age_group, 'formatId', t.format_id, 'seasonId', t.season_id,
     'reach', (select json_build_object('strongFootMm', r.strong_foot_mm, 'otherFootMm', r.other_foot_mm,
                        'measuredOn', r.measured_on)
               from team_reach r where r.club_id = $1 and r.team_id = $2))
   from team t where t.club_id = $1 and t.team_id = $2 and t.retired_at is null) as team,
  coalesce((select json_agg(json_build_object('memberId', a.member_id, 'displayName', a.display_name)
                            order by a.display_name, a.member_id)
            from membership a where a.club_id = $1 and a.ended_at is null and exists (
              select from member_role r where r.club_id = $1 and r.member_id = a.member_id and r.team_id = $2)), '[]')
    as adults,
  coalesce((select json_agg(json_build_object(
              'dateId', d.date_id, 'startsAt', (extract(epoch from d.starts_at) * 1000)::bigint,
              'endsAt', (extract(epoch from d.ends_at) * 1000)::bigint, 'localDate', d.local_date,
              'spaceId', d.space_id, 'state', d.state,
              'reported', exists (select from record x where x.club_id = $1 and x.date_id = d.date_id
                                  and x.standing = 'stands')) order by d.starts_at, d.date_id)
            from (select * from training_date where club_id = $1 and team_id = $2 and ends_at > $3 and starts_at <= $4
                  union all
                  (select * from training_date where club_id = $1 and team_id = $2 and ends_at <= $3 and state = 'on'
                   order by ends_at desc limit 1)) d), '[]') as dates,
  coalesce((select json_agg(json_build_object('spaceId', s.space_id, 'space', s.doc) order by s.venue, s.name, s.space_id)
            from space s where s.club_id = $1 and s.retired_at is null), '[]') as spaces,
  coalesce((select json_agg(json_build_object('owner', e.owner_key, 'kind', e.kind, 'count', e.count)
                            order by e.owner_key, e.kind)
            from equipment e where e.club_id = $1 and e.owner_key in ('club', $2::text)), '[]') as equipment,
  coalesce((select json_agg(json_build_object(
              'playerId', p.player_id, 'sealed', encode(p.name_sealed, 'base64'), 'wrapped', encode(k.wrapped_key, 'base64'),
              'shirt', p.shirt, 'home', p.home, 'stretch', p.stretch, 'goalkeeper', p.goalkeeper, 'foot', p.foot,
              'left', coalesce(b.on_left, 0), 'right', coalesce(b.on_right, 0)) order by p.player_id)
            from player p
            left join subject_key k on k.club_id = $1 and k.player_id = p.player_id
            left join (
              select player_id, sum(blocks) filter (where side = 'left') as on_left,
                sum(blocks) filter (where side = 'right') as on_right
              from player_blocks where club_id = $1 group by player_id) b on b.player_id = p.player_id
            where p.club_id = $1 and p.team_id = $2 and p.left_at is null), '[]') as squad,
  coalesce((select json_agg(done order by done.ordinal_id)
            from (select s.stage_id as ordinal_id, s.stage_id as "stageId", count(distinct x.date_id) as sessions,
                    max(d.local_date) as "lastDate",
                    coalesce(sum(s.attempts_left), 0) as "attemptsLeft", coalesce(sum(s.attempts_right), 0) as "attemptsRight",
                    coalesce(sum(s.successes_left), 0) as "gotOutLeft", coalesce(sum(s.successes_right), 0) as "gotOutRight"
                  from stage_done s
                  join record x on x.club_id = $1 and x.record_id = s.record_id
                  join training_date d on d.club_id = $1 and d.date_id = x.date_id
                  where s.club_id = $1 and s.team_id = $2 and s.stands group by s.stage_id) done), '[]') as progress,
  (select json_build_object('curriculumId', a.curriculum_id, 'number', a.number, 'contentHash', encode(v.content_hash, 'hex'))
   from adoption a join curriculum_version v using (club_id, curriculum_id, number)
   where a.club_id = $1 and a.team_id = $2 and a.from_date <= ($3::timestamptz at time zone c.zone)::date
   order by a.from_date desc, a.ordinal desc limit 1) as adopted
from club c where c.club_id = $1`

export async function findContentText(db: ClubDb, curriculumId: string, number: number): Promise<string> {
  const rows = await db.sql.rows<{ content: string }>({
    name: 'find-content-text',
    text: 'select content from curriculum_version where club_id = $1 and curriculum_id = $2 and number = $3',
    values: [db.clubId, curriculumId, number],
  })
  return rows[0]!.content
}

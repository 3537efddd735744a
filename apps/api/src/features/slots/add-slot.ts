import type { SlotBody } from '@espalier/contract/places'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import { addDays, earlierDay, isRealDay, laterDay, SPAN_DAYS_MAX } from '../../clock/local-dates'
import { type CommandAnswer, type CommandContext, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { ProblemPointer, Refusal } from '../../http/problem-error'
import { replanTeam } from '../adoptions/replan-team'
import { findClub } from '../clubs/queries'
import { findTeam, lockTeam, type TeamOnly } from '../teams/queries'
import { listSlotDates, type SlotDate } from './slot-dates'

/** A weekly slot and, in the same breath, its training dates inside the team's season. */
export function addSlot(
  deps: Deps,
  request: CommandRequest,
  teamId: string,
  body: SlotBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'slots.write',
    find: (db) => findTeam(db, teamId),
    lock: ({ db }) => lockTeam(db, teamId),
    target: (team) => ({ teamId: team.teamId }),
    work: async (context, team) => {
      const faults = await listFaults(context.db, body)
      if (faults.length > 0) return refuse({ code: 'bad-request', errors: faults })
      await insertSlot(context.db, teamId, body)
      const dates = await insertDates(context, team, body)
      await replanTeam(context, team)
      return ok({
        status: 201,
        id: body.id,
        version: 1,
        entry: {
          kind: 'slot.added',
          subjectId: body.id,
          teamId,
          facts: {
            weekday: body.weekday,
            minutes: body.minutes,
            validFrom: body.validFrom,
            validTo: body.validTo,
            dates: dates.length,
          },
        },
      })
    },
  })
}

async function listFaults(db: ClubDb, body: SlotBody): Promise<readonly ProblemPointer[]> {
  const faults: ProblemPointer[] = []
  if (!isRealDay(body.validFrom)) faults.push({ pointer: '/validFrom', detail: 'the calendar has no such day' })
  if (!isRealDay(body.validTo)) faults.push({ pointer: '/validTo', detail: 'the calendar has no such day' })
  if (faults.length === 0 && body.validTo < body.validFrom)
    faults.push({ pointer: '/validTo', detail: 'comes before the first day' })
  if (faults.length === 0 && body.validTo > addDays(body.validFrom, SPAN_DAYS_MAX))
    faults.push({ pointer: '/validTo', detail: `comes more than ${SPAN_DAYS_MAX} days after the first day` })
  if (body.spaceId !== null) {
    const known = await db.sql.rows({
      name: 'hold-space',
      text: 'select 1 from space where club_id = $1 and space_id = $2 and retired_at is null for key share',
      values: [db.clubId, body.spaceId],
    })
    if (known.length === 0)
      faults.push({ pointer: '/spaceId', detail: 'is no space of this club', code: 'reference-unknown' })
  }
  return faults
}

async function insertSlot(db: ClubDb, teamId: string, body: SlotBody): Promise<void> {
  await db.sql.changed({
    name: 'insert-slot',
    text: `insert into training_slot
             (club_id, slot_id, team_id, space_id, weekday, local_start, minutes, valid_from, valid_to)
           values ($1, $2, $3, $4, $5, $6, $7, $8, $9)`,
    values: [
      db.clubId,
      body.id,
      teamId,
      body.spaceId,
      body.weekday,
      body.localStart,
      body.minutes,
      body.validFrom,
      body.validTo,
    ],
  })
}

type SeasonDaysRow = { readonly first_day: string; readonly last_day: string }

/** Days outside the season become no dates; the page says how many did. */
async function insertDates({ db }: CommandContext, team: TeamOnly, body: SlotBody): Promise<readonly SlotDate[]> {
  const seasons = await db.sql.rows<SeasonDaysRow>({
    name: 'find-season-days',
    text: 'select first_day, last_day from season where club_id = $1 and season_id = $2',
    values: [db.clubId, team.seasonId],
  })
  const season = seasons[0]!
  const club = await findClub(db)
  const firstDay = laterDay(body.validFrom, season.first_day)
  const lastDay = earlierDay(body.validTo, season.last_day)
  const dates = listSlotDates({ slotId: body.id, ...body }, club!.zone, firstDay, lastDay)
  await db.sql.changed({
    name: 'insert-training-dates',
    text: `insert into training_date
             (club_id, date_id, team_id, season_id, slot_id, space_id, starts_at, ends_at, local_date, week, state)
           select $1, id, $2, $3, $4, $5, starts_at, ends_at, local_date, week, 'on'
           from unnest($6::uuid[], $7::timestamptz[], $8::timestamptz[], $9::date[], $10::date[])
             as evening (id, starts_at, ends_at, local_date, week)`,
    values: [
      db.clubId,
      team.teamId,
      team.seasonId,
      body.id,
      body.spaceId,
      dates.map((date) => date.dateId),
      dates.map((date) => date.startsAt),
      dates.map((date) => date.endsAt),
      dates.map((date) => date.localDate),
      dates.map((date) => date.week),
    ],
  })
  return dates
}

import { space } from '@espalier/contract/places'
import type { PlanBody } from '@espalier/contract/records'
import { nominalSpace, type Space } from '@espalier/domain/pitch'
import { millimetres, minutes, ok, type Result, refuse } from '@espalier/domain/quantities'
import { GUEST_PREFIX, planChecks, type SessionPlan } from '@espalier/domain/session'
import * as z from 'zod/mini'
import { type CommandAnswer, type CommandContext, type CommandRequest, runCommand } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import type { Refusal } from '../../http/problem-error'
import { findTeam, type TeamOnly } from '../teams/queries'
import { type EveningRow, listFollowedStages, listSquadIds, lockEvening } from './queries'

/** The plan a phone computed, kept as it is. The server checks what every plan keeps, never that it would plan the same. */
export function keepPlan(
  deps: Deps,
  request: CommandRequest,
  operationId: string,
  body: PlanBody,
): Promise<Result<CommandAnswer, Refusal>> {
  return runCommand(deps, request, {
    permission: 'operations.write',
    find: (db) => findTeam(db, body.teamId),
    lock: ({ db }) => findTeam(db, body.teamId),
    target: ({ teamId }) => ({ teamId }),
    work: async (context, team) => {
      const evening = await lockEvening(context.db, body.teamId, body.dateId)
      if (evening === null)
        return refuse({
          code: 'date-unknown',
          errors: [{ pointer: '/body/dateId', detail: 'is no date of this team' }],
        })
      const checked = await checkPlan(context.db, team, evening, body)
      if (!checked.ok) return checked
      await insertPlan(context, operationId, body)
      return ok({
        status: 201,
        id: operationId,
        version: null,
        entry: {
          kind: 'evening.planned',
          subjectId: body.dateId,
          teamId: body.teamId,
          facts: {
            plan: operationId,
            inputsHash: body.inputsHash,
            planner: body.plan.planner,
            curriculum: body.curriculumId,
            number: body.number,
            stage: body.plan.stage?.stageId ?? null,
            children: body.plan.children.length,
            minutes: body.plan.totalMinutes,
          },
        },
      })
    },
  })
}

async function checkPlan(
  db: ClubDb,
  team: TeamOnly,
  evening: EveningRow,
  body: PlanBody,
): Promise<Result<true, Refusal>> {
  const version = await findPlannedVersion(db, body)
  if (!version.ok) return version
  const place = await findSpace(db, team, body.spaceId ?? evening.space_id)
  if (place === null)
    return refuse({
      code: 'plan-does-not-hold',
      errors: [{ pointer: '/body/spaceId', detail: 'is no space of this club' }],
    })
  const faults = planChecks(body.plan, {
    slotMinutes: minutes(Math.round((evening.ends_at.getTime() - evening.starts_at.getTime()) / 60_000)),
    space: place,
    stageIds: version.value,
    squadIds: [...(await listSquadIds(db, body.teamId))],
  })
  if (faults.length === 0) return ok(true)
  const errors = faults.map(({ code, pointer }) => ({ pointer: `/body/plan${pointer}`, detail: code, code }))
  return refuse({ code: 'plan-does-not-hold', errors })
}

/** Stages of the version the plan says it was made from: that version must be one the team has ever followed. */
async function findPlannedVersion(db: ClubDb, body: PlanBody): Promise<Result<readonly string[], Refusal>> {
  if (body.curriculumId === null || body.number === null) return ok([])
  const rows = await db.sql.rows<{ stage_ids: string[] }>({
    name: 'list-planned-version-stages',
    text: `select array(select stage_id from version_stage s
                        where s.club_id = $1 and s.curriculum_id = $3 and s.number = $4) as stage_ids
           from adoption a where a.club_id = $1 and a.team_id = $2 and a.curriculum_id = $3 and a.number = $4 limit 1`,
    values: [db.clubId, body.teamId, body.curriculumId, body.number],
  })
  const row = rows[0]
  if (row !== undefined) return ok(row.stage_ids)
  const followed = await listFollowedStages(db, body.teamId, '9999-12-31')
  const pointer = '/body/curriculumId'
  return followed === null
    ? refuse({ code: 'nothing-adopted', errors: [{ pointer, detail: 'the team follows no version' }] })
    : refuse({ code: 'stage-unknown', errors: [{ pointer, detail: 'the team never followed this version' }] })
}

/** Without a space nobody measured anything: then only what no field exceeds is asked of the areas. */
async function findSpace(db: ClubDb, team: TeamOnly, spaceId: string | null): Promise<Space | null> {
  if (spaceId === null) {
    const side = millimetres(150_000)
    return { ...nominalSpace(team.formatId), covers: 'plain', lengthMm: side, widthMm: side }
  }
  const rows = await db.sql.rows<{ doc: unknown }>({
    name: 'find-space-of-plan',
    text: 'select doc from space where club_id = $1 and space_id = $2',
    values: [db.clubId, spaceId],
  })
  return rows[0] === undefined ? null : z.parse(space, rows[0].doc)
}

async function insertPlan({ db, member, at }: CommandContext, operationId: string, body: PlanBody): Promise<void> {
  await db.sql.changed({
    name: 'insert-plan',
    text: `insert into plan (club_id, plan_id, date_id, curriculum_id, number, planner, inputs_hash, doc, author_id,
             received_at) values ($1, $2, $3, $4, $5, $6, $7, $8, $9, $10)`,
    values: [
      db.clubId,
      operationId,
      body.dateId,
      body.curriculumId,
      body.number,
      body.plan.planner,
      Buffer.from(body.inputsHash, 'hex'),
      forgetGuests(body.plan),
      member.memberId,
      at,
    ],
  })
}

/** Guests are known by initials for one evening and no longer: what is kept numbers them instead. */
export function forgetGuests(plan: SessionPlan): string {
  const numbers = new Map<string, string>()
  return JSON.stringify(plan, (_name, value: unknown) => {
    if (typeof value !== 'string' || !value.startsWith(GUEST_PREFIX)) return value
    const known = numbers.get(value) ?? `${GUEST_PREFIX}${numbers.size + 1}`
    numbers.set(value, known)
    return known
  })
}

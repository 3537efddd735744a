import { PRESSURES, type VersionContent } from '@espalier/domain/curriculum'
import { ok, type Result, refuse } from '@espalier/domain/quantities'
import type { CommandContext } from '../../commands/run-command'
import type { ClubDb } from '../../db/with-club'
import type { ProblemPointer, Refusal } from '../../http/problem-error'

export type FrozenVersion = {
  readonly content: VersionContent
  readonly text: string
  readonly hash: Buffer
  readonly draftVersion: number
}

/** The rows of a published version. The older one stays as it is; only which of them is offered moves. */
export async function saveVersion(context: CommandContext, version: FrozenVersion): Promise<Result<true, Refusal>> {
  const { db } = context
  const { curriculumId, number } = version.content
  const taken = await saveStages(db, version.content)
  if (taken.length > 0) return refuse({ code: 'identifier-twice', errors: taken })
  await db.sql.changed({
    name: 'withdraw-offer',
    text: 'update curriculum_version set offered = false where club_id = $1 and curriculum_id = $2 and offered',
    values: [db.clubId, curriculumId],
  })
  await db.sql.changed({
    name: 'insert-version',
    text: `insert into curriculum_version (club_id, curriculum_id, number, content, content_hash, check_version,
             published_by, published_at, entry_id) values ($1, $2, $3, $4, $5, $6, $7, $8, $9)`,
    values: [
      db.clubId,
      curriculumId,
      number,
      version.text,
      version.hash,
      version.content.checkVersion,
      context.member.memberId,
      context.at,
      context.entryId,
    ],
  })
  await insertVersionStages(db, version.content)
  await db.sql.changed({
    name: 'base-draft-on-version',
    text: 'update draft set based_on = $3, version = $4 where club_id = $1 and curriculum_id = $2',
    values: [db.clubId, curriculumId, number, version.draftVersion + 1],
  })
  return ok(true)
}

function stagesOf(content: VersionContent) {
  return content.progressions.flatMap(({ stages }, at) =>
    stages.map((stage, place) => ({ stage, pointer: `/progressions/${at}/stages/${place}/stageId` })),
  )
}

/** A stage belongs to one curriculum for ever; returns those whose id another curriculum has. */
async function saveStages(db: ClubDb, content: VersionContent): Promise<readonly ProblemPointer[]> {
  const stages = stagesOf(content)
  const saved = await db.sql.rows<{ stage_id: string }>({
    name: 'save-stages',
    text: `insert into stage (club_id, stage_id, curriculum_id, title)
           select $1, id, $2, title from unnest($3::uuid[], $4::text[]) as new (id, title)
           on conflict (club_id, stage_id) do update set title = excluded.title
             where stage.curriculum_id = excluded.curriculum_id
           returning stage_id`,
    values: [
      db.clubId,
      content.curriculumId,
      stages.map(({ stage }) => stage.stageId),
      stages.map(({ stage }) => stage.title),
    ],
  })
  const ours = new Set(saved.map(({ stage_id }) => stage_id))
  return stages
    .filter(({ stage }) => !ours.has(stage.stageId))
    .map(({ pointer }) => ({ pointer, detail: 'is a stage of another curriculum' }))
}

async function insertVersionStages(db: ClubDb, content: VersionContent): Promise<void> {
  const stages = stagesOf(content).map(({ stage }) => stage)
  await db.sql.changed({
    name: 'insert-version-stages',
    text: `insert into version_stage (club_id, curriculum_id, number, stage_id, ordinal, pressure)
           select $1, $2, $3, id, ordinal, pressure
           from unnest($4::uuid[], $5::smallint[], $6::smallint[]) as new (id, ordinal, pressure)`,
    values: [
      db.clubId,
      content.curriculumId,
      content.number,
      stages.map(({ stageId }) => stageId),
      stages.map((_, ordinal) => ordinal),
      stages.map(({ pressure }) => PRESSURES.indexOf(pressure)),
    ],
  })
}

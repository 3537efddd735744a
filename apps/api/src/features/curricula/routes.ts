import { clubParams, entityTag } from '@espalier/contract/commands'
import {
  type CurriculumSummary,
  curriculumBody,
  curriculumList,
  curriculumParams,
  curriculumSummary,
  draftEdit,
  draftRow,
  publishBody,
  versionParams,
  versionRow,
} from '@espalier/contract/curricula'
import { paths } from '@espalier/contract/paths'
import { decideAccess, type Member } from '@espalier/domain/access'
import { runListQuery, runQuery } from '../../commands/run-query'
import type { ClubDb } from '../../db/with-club'
import type { Deps } from '../../deps'
import { versionPublished } from '../../events'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendJsonText } from '../../http/send-json-text'
import { sendOutcome } from '../../http/send-outcome'
import { addCurriculum } from './add-curriculum'
import { curriculumSummaryOf, draftBodyOf, versionTextOf } from './bodies'
import { publishVersion } from './publish-version'
import { findDraft, findVersion, listCurricula, listPublishedCurricula, listVersions } from './queries'
import { saveDraft } from './save-draft'

export function registerCurricula(app: Api, deps: Deps): void {
  registerReads(app, deps)
  app.post(
    paths.curricula,
    { schema: commandSchema(clubParams, curriculumBody), config: commandRoute('curricula.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await addCurriculum(deps, commandOf(request), request.body))),
  )
  app.put(
    paths.draft,
    { schema: editSchema(curriculumParams, draftEdit), config: commandRoute('curricula.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await saveDraft(deps, commandOf(request), request.params.curriculumId, request.body))),
  )
  app.post(
    paths.versions,
    { schema: editSchema(curriculumParams, publishBody), config: commandRoute('curricula.publish') },
    async (request, reply) => {
      const published = unwrap(await publishVersion(deps, commandOf(request), request.params.curriculumId))
      versionPublished(request.log, request.params.clubId, published)
      return sendOutcome(reply, published)
    },
  )
}

function registerReads(app: Api, deps: Deps): void {
  app.get(
    paths.curricula,
    {
      schema: { params: clubParams, response: responses({ 200: curriculumList }) },
      config: memberRoute('versions.read'),
    },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'versions.read',
          read: async (db, _reach, member) => ({ curricula: await listVisible(db, member, deps) }),
        }),
      ),
  )
  app.get(
    paths.curriculum,
    {
      schema: { params: curriculumParams, response: responses({ 200: curriculumSummary }) },
      config: memberRoute('versions.read'),
    },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'versions.read',
          read: async (db, _reach, member) =>
            (await listVisible(db, member, deps)).find((row) => row.curriculumId === request.params.curriculumId) ??
            null,
        }),
      ),
  )
  app.get(
    paths.draft,
    {
      schema: { params: curriculumParams, response: responses({ 200: draftRow }) },
      config: memberRoute('curricula.read-draft'),
    },
    async (request, reply) => {
      const body = unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'curricula.read-draft',
          find: (db) => findDraft(db, request.params.curriculumId),
          target: () => ({}),
          read: async (_db, found) => draftBodyOf(found),
        }),
      )
      return reply.header('etag', entityTag(body.version)).send(body)
    },
  )
  app.get(
    paths.version,
    {
      schema: { params: versionParams, response: responses({ 200: versionRow }) },
      config: memberRoute('versions.read'),
    },
    async (request, reply) => {
      const { clubId, curriculumId, number } = request.params
      const text = unwrap(
        await runQuery(deps, loginOf(request), clubId, {
          permission: 'versions.read',
          find: (db) => findVersion(db, curriculumId, Number(number)),
          target: () => ({}),
          read: async (_db, found) => versionTextOf(found),
        }),
      )
      return sendJsonText(reply, text)
    },
  )
}

/** Whoever may not see drafts sees of a curriculum what is published, and nothing of one that never was. */
async function listVisible(db: ClubDb, member: Member, deps: Deps): Promise<CurriculumSummary[]> {
  const seesDrafts = decideAccess(member, 'curricula.read-draft', {}, deps.accessRules) === 'allowed'
  const versions = await listVersions(db, null)
  const rows = seesDrafts ? await listCurricula(db) : await listPublishedCurricula(db)
  return rows.map((row) => curriculumSummaryOf(row, versions))
}

import { teamParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { slotBody, slots, trainingDates } from '@espalier/contract/places'
import { runQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { findClub } from '../clubs/queries'
import { findTeam } from '../teams/queries'
import { addSlot } from './add-slot'
import { dateBodyOf, slotBodyOf } from './bodies'
import { listDates, listSlots } from './queries'

export function registerSlots(app: Api, deps: Deps): void {
  app.get(
    paths.slots,
    { schema: { params: teamParams, response: responses({ 200: slots }) }, config: memberRoute('slots.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'slots.read',
          find: (db) => findTeam(db, request.params.teamId),
          target: ({ teamId }) => ({ teamId }),
          read: async (db, { teamId }) => ({ slots: (await listSlots(db, teamId)).map(slotBodyOf) }),
        }),
      ),
  )
  app.post(
    paths.slots,
    { schema: commandSchema(teamParams, slotBody), config: commandRoute('slots.write') },
    async (request, reply) =>
      sendOutcome(reply, unwrap(await addSlot(deps, commandOf(request), request.params.teamId, request.body))),
  )
  app.get(
    paths.dates,
    { schema: { params: teamParams, response: responses({ 200: trainingDates }) }, config: memberRoute('dates.read') },
    async (request) =>
      unwrap(
        await runQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'dates.read',
          find: (db) => findTeam(db, request.params.teamId),
          target: ({ teamId }) => ({ teamId }),
          read: async (db, { teamId }) => {
            const club = await findClub(db)
            return { dates: (await listDates(db, teamId)).map((row) => dateBodyOf(row, club!.zone)) }
          },
        }),
      ),
  )
}

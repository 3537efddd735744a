import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { people, personBody, personEdit, personParams } from '@espalier/contract/people'
import { signInLinkBody } from '@espalier/contract/sign-in'
import { checkAccess, teamIdsOf } from '../../commands/check-access'
import { runListQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, commandSchema, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { addPerson } from './add-person'
import { personBodyOf } from './bodies'
import { changePerson } from './change-person'
import { endLogins } from './end-logins'
import { makeSignInLink } from './make-sign-in-link'
import { listPeople } from './queries'

export function registerPeople(app: Api, deps: Deps): void {
  app.get(
    paths.people,
    { schema: { params: clubParams, response: responses({ 200: people }) }, config: memberRoute('people.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'people.read',
          read: async (db, reach, member) => {
            const rows = await listPeople(db, teamIdsOf(reach), new Date(deps.now()))
            const mayMakeLinks = checkAccess(deps.accessRules, member, 'sign-in-links.make', {}).ok
            return { people: rows.map((row) => personBodyOf(row, mayMakeLinks)) }
          },
        }),
      ),
  )
  app.post(
    paths.people,
    {
      schema: commandSchema(clubParams, personBody),
      config: commandRoute('people.write'),
    },
    async (request, reply) => sendOutcome(reply, unwrap(await addPerson(deps, commandOf(request), request.body))),
  )
  app.put(
    paths.person,
    {
      schema: editSchema(personParams, personEdit),
      config: commandRoute('people.write'),
    },
    async (request, reply) => {
      const { clubId, memberId } = request.params
      const changed = unwrap(await changePerson(deps, commandOf(request), memberId, request.body))
      if (request.body.left) await endLogins(deps, clubId, memberId)
      return sendOutcome(reply, changed)
    },
  )
  app.post(
    paths.signInLinks,
    {
      schema: commandSchema(personParams, signInLinkBody),
      config: commandRoute('sign-in-links.make'),
    },
    async (request, reply) => {
      const { clubId, memberId } = request.params
      const made = unwrap(await makeSignInLink(deps, commandOf(request), memberId, request.body))
      await endLogins(deps, clubId, memberId)
      return sendOutcome(reply, made)
    },
  )
}

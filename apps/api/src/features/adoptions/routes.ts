import { teamParams } from '@espalier/contract/commands'
import { adoptionBody } from '@espalier/contract/curricula'
import { paths } from '@espalier/contract/paths'
import type { Deps } from '../../deps'
import { versionAdopted } from '../../events'
import { type Api, commandSchema } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { adoptVersion } from './adopt-version'

export function registerAdoptions(app: Api, deps: Deps): void {
  app.post(
    paths.adoptions,
    { schema: commandSchema(teamParams, adoptionBody), config: commandRoute('versions.adopt') },
    async (request, reply) => {
      const { clubId, teamId } = request.params
      const adopted = unwrap(await adoptVersion(deps, commandOf(request), teamId, request.body))
      versionAdopted(request.log, clubId, teamId, adopted)
      return sendOutcome(reply, adopted)
    },
  )
}

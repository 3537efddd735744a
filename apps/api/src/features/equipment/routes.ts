import { clubParams } from '@espalier/contract/commands'
import { paths } from '@espalier/contract/paths'
import { equipment, equipmentBody } from '@espalier/contract/places'
import { teamIdsOf } from '../../commands/check-access'
import { runListQuery } from '../../commands/run-query'
import type { Deps } from '../../deps'
import { type Api, editSchema, responses } from '../../http/api'
import { commandOf } from '../../http/command-of'
import { commandRoute, loginOf, memberRoute } from '../../http/guards'
import { unwrap } from '../../http/problem-error'
import { sendOutcome } from '../../http/send-outcome'
import { equipmentBodyOf } from './bodies'
import { countEquipment } from './count-equipment'
import { listEquipment } from './queries'

export function registerEquipment(app: Api, deps: Deps): void {
  app.get(
    paths.equipment,
    { schema: { params: clubParams, response: responses({ 200: equipment }) }, config: memberRoute('equipment.read') },
    async (request) =>
      unwrap(
        await runListQuery(deps, loginOf(request), request.params.clubId, {
          permission: 'equipment.read',
          read: async (db, reach) => equipmentBodyOf(await listEquipment(db, teamIdsOf(reach))),
        }),
      ),
  )
  app.post(
    paths.equipment,
    { schema: editSchema(clubParams, equipmentBody), config: commandRoute('equipment.write') },
    async (request, reply) => sendOutcome(reply, unwrap(await countEquipment(deps, commandOf(request), request.body))),
  )
}

import type { Deps } from '../deps'
import type { Api } from '../http/api'
import { registerAdoptions } from './adoptions/routes'
import { registerClub } from './clubs/routes'
import { registerCoverage } from './coverage/routes'
import { registerCurricula } from './curricula/routes'
import { registerEquipment } from './equipment/routes'
import { registerKit } from './kit/routes'
import { registerLedger } from './ledger/routes'
import { registerLogins } from './logins/routes'
import { registerOperations } from './operations/routes'
import { registerPatternChecks } from './pattern-checks/routes'
import { registerPatterns } from './patterns/routes'
import { registerPeople } from './people/routes'
import { registerRecords } from './records/routes'
import { registerSeasons } from './seasons/routes'
import { registerSlots } from './slots/routes'
import { registerSpaces } from './spaces/routes'
import { registerSquads } from './squads/routes'
import { registerTeams } from './teams/routes'

/** All that the service can do, in the order in which a club meets it. */
export function registerFeatures(app: Api, deps: Deps): void {
  registerLogins(app, deps)
  registerClub(app, deps)
  registerPeople(app, deps)
  registerSeasons(app, deps)
  registerTeams(app, deps)
  registerSpaces(app, deps)
  registerSlots(app, deps)
  registerEquipment(app, deps)
  registerSquads(app, deps)
  registerPatterns(app, deps)
  registerPatternChecks(app, deps)
  registerCurricula(app, deps)
  registerAdoptions(app, deps)
  registerKit(app, deps)
  registerOperations(app, deps)
  registerRecords(app, deps)
  registerCoverage(app, deps)
  registerLedger(app, deps)
}

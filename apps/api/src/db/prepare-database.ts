import type { ClientBase } from 'pg'
import { type Migration, migrate } from './migrate'
import { keepNameKey, refuseOtherNameKey } from './name-key'
import { ensureDatabaseAccess, ensureRoles, type RolePasswords } from './roles'

export type Preparation = {
  readonly passwords: RolePasswords
  readonly keyEncryptionKey: Buffer
  readonly migrations: readonly Migration[]
}

/**
 * Roles, access, migrations, and the key of names, in this order; the names of what was applied. With another key than
 * the database's it changes nothing, not even a password: whoever lost the file of secrets has lost those too.
 */
export async function prepareDatabase(owner: ClientBase, preparation: Preparation): Promise<readonly string[]> {
  await refuseOtherNameKey(owner, preparation.keyEncryptionKey)
  await ensureRoles(owner, preparation.passwords)
  await ensureDatabaseAccess(owner)
  const applied = await migrate(owner, preparation.migrations)
  await keepNameKey(owner, preparation.keyEncryptionKey)
  return applied
}

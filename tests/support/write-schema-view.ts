// npm run gen:schema: writes schema.prisma and catalogue.txt from a database that has all migrations.
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describeCatalogue } from '../../apps/api/src/db/catalogue'
import { introspect } from '../../apps/api/src/db/introspect'
import { renderSchemaView } from '../../apps/api/src/db/schema-view'
import { databaseUrl, startTestCluster, withOwner } from './database-cluster'

const { cluster, stop } = await startTestCluster()
try {
  await withOwner(databaseUrl(cluster.ownerUrl, cluster.template), async (owner) => {
    const folder = join(import.meta.dirname, '../../prisma')
    writeFileSync(join(folder, 'schema.prisma'), renderSchemaView(await introspect(owner)))
    writeFileSync(join(folder, 'catalogue.txt'), await describeCatalogue(owner))
  })
} finally {
  await stop()
}

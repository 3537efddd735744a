// Starts a test cluster and waits to be killed; see tests/faults/abandoned-run.test.ts.
import { startTestCluster } from './database-cluster'

const { cluster } = await startTestCluster()
console.log(`started ${cluster.ownerUrl}`)
setInterval(() => {}, 1_000)

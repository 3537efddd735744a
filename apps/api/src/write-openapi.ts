import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describeApi } from './describe-api'

// npm run gen: writes the contract that clients read, from the routes themselves.
writeFileSync(join(import.meta.dirname, '../../../packages/contract/src/openapi.json'), await describeApi())

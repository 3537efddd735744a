import { defineConfig } from 'prisma/config'

// Prisma would download an engine it never uses here: the client is generated without one, and migrations are plain SQL
// applied by our own runner. Any file that exists satisfies its search.
process.env.PRISMA_SCHEMA_ENGINE_BINARY ??= process.execPath

export default defineConfig({ schema: 'prisma/schema.prisma' })

import { defineConfig } from 'vitest/config'

// One project a lane, so that a step of the test run can name just what it needs.
export default defineConfig({
  test: {
    projects: [
      {
        test: {
          name: 'domain',
          include: ['packages/**/src/**/*.test.ts', 'prisma/demo/**/*.test.ts'],
          // Property tests compute for seconds; on a busy machine for several times as long.
          testTimeout: 60_000,
        },
      },
      { test: { name: 'web', include: ['apps/web/src/**/*.test.{ts,tsx}'] } },
      {
        test: {
          name: 'api',
          include: ['apps/api/src/**/*.test.ts', 'tests/{contract,isolation,faults}/**/*.test.ts'],
          globalSetup: ['tests/support/database-cluster.ts'],
          testTimeout: 20_000,
          hookTimeout: 60_000,
        },
      },
      { test: { name: 'local', include: ['apps/local/**/*.test.mjs'], testTimeout: 120_000 } },
      { test: { name: 'repo', include: ['tests/repo/**/*.test.ts'], testTimeout: 60_000 } },
    ],
  },
})

import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Engine and web tests are pure and share threads; what starts servers and processes gets processes of its own. */
export default defineConfig({
  root,
  cacheDir: '.cache/vitest',
  test: {
    // The machines of a school and of continuous integration are slow and shared; nothing here measures time.
    testTimeout: 30_000,
    hookTimeout: 30_000,
    projects: [
      {
        extends: true,
        test: { name: 'engine', include: ['tests/engine/**/*.test.ts', 'tests/house/**/*.test.ts'], pool: 'threads' },
      },
      {
        extends: true,
        test: { name: 'published', include: ['tests/published/**/*.test.ts'], testTimeout: 120_000, pool: 'threads' },
      },
      { extends: true, test: { name: 'web', include: ['tests/web/**/*.test.{ts,tsx}'], pool: 'threads' } },
      { extends: true, test: { name: 'server', include: ['tests/server/**/*.test.ts'], pool: 'forks' } },
      {
        extends: true,
        test: {
          name: 'faults',
          include: ['tests/faults/**/*.test.ts'],
          pool: 'forks',
          testTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
})

import { availableParallelism } from 'node:os'
import { fileURLToPath } from 'node:url'
import { defineConfig } from 'vitest/config'

const root = fileURLToPath(new URL('..', import.meta.url))

/** Pure tests go first, as many at a time as there are cores, and wait for nothing. */
const PURE = { pool: 'threads', maxWorkers: availableParallelism(), sequence: { groupOrder: 0 } } as const
/** What starts servers and processes comes after them, in processes of its own, with room for what it starts. */
const WITH_SERVERS = { pool: 'forks', sequence: { groupOrder: 1 } } as const

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
        test: { name: 'engine', include: ['tests/engine/**/*.test.ts', 'tests/house/**/*.test.ts'], ...PURE },
      },
      {
        extends: true,
        test: { name: 'published', include: ['tests/published/**/*.test.ts'], testTimeout: 120_000, ...PURE },
      },
      { extends: true, test: { name: 'web', include: ['tests/web/**/*.test.{ts,tsx}'], ...PURE } },
      { extends: true, test: { name: 'server', include: ['tests/server/**/*.test.ts'], ...WITH_SERVERS } },
      {
        extends: true,
        test: {
          name: 'faults',
          include: ['tests/faults/**/*.test.ts'],
          ...WITH_SERVERS,
          testTimeout: 120_000,
          fileParallelism: false,
        },
      },
    ],
  },
})

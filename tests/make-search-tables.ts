/**
 * Makes the search tables that all tests share, in .cache, before the tests begin: else every server that a test starts
 * would make them for itself, at the same time. Where they are kept already this takes a second.
 */

import { fileURLToPath } from 'node:url'
import { openSearchPool } from '../server/search/search-pool.ts'

const KEPT_IN = fileURLToPath(new URL('../.cache', import.meta.url))

const beganMs = Date.now()
const log = { info: () => {}, warn: (_: unknown, what?: string) => console.warn(what) }
const pool = openSearchPool({ dataDir: KEPT_IN, log })
const stories = await pool.ready
await pool.close()
const nMade = stories.filter(({ how }) => how !== 'read').length
console.log(`${stories.length} tables, ${nMade} of them made, ${((Date.now() - beganMs) / 1_000).toFixed(1)} s`)

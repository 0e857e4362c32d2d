/** Opens the threads that search, for a command: tables from the data folder, and a progress bar while they come. */

import type { Stage } from '../../engine/method/stages.ts'
import { readConfig } from '../config.ts'
import { KEPT_FOR_SETUPS, KEPT_NAMES, keptForGoal } from '../search/kept-names.ts'
import { startProgressBar } from '../search/progress-bar.ts'
import { openSearchPool, type SearchPool } from '../search/search-pool.ts'
import { UnusableInput } from './unusable-input.ts'

/** @param need the goal of the one question, `setup` for setups of one stage, or `all` for whatever may come */
export type OpenSearch = (need: Stage | 'setup' | 'all') => SearchPool

/** Tables are read in less time than this; nobody wants to hear of it. */
const QUIET_MS = 1_500

/** @returns the threads; throws `UnusableInput` when the environment is at fault */
export const openSearch: OpenSearch = (need) => {
  const config = readConfig(process.env)
  if (!config.ok) throw new UnusableInput(config.faults.join(' '))
  const bar = startProgressBar(process.stderr, () => performance.now())
  const beganAtMs = performance.now()
  const say = (_fields: object, line: string) => bar.say(`cube: ${line}`)
  const pool = openSearchPool({
    dataDir: config.config.tablesDir,
    log: { info: () => {}, warn: say as never },
    tables: tablesFor(need),
    // Nobody else waits here.
    nLongAtOnce: Number.POSITIVE_INFINITY,
    onProgress: (share, what) => {
      if (performance.now() - beganAtMs > QUIET_MS) bar.show(share, what)
    },
  })
  pool.ready.then(bar.end, bar.end)
  return pool
}

function tablesFor(need: Stage | 'setup' | 'all') {
  if (need === 'setup') return KEPT_FOR_SETUPS
  return need === 'all' ? KEPT_NAMES : keptForGoal(need)
}

/** Brings all tables to memory, several at a time, and says what was done and how far it is. */

import { basename } from 'node:path'
import type { Logger } from 'pino'
import { KEPT_NAMES, type KeptName } from './kept-names.ts'
import type { TableOutcome } from './kept-table.ts'
import type { ThreadData } from './search-thread-messages.ts'
import type { SearchThreads } from './search-threads.ts'
import { bytesOfTable } from './table-hashes.ts'

/** How one table came to memory. */
export type TableStory = { readonly name: KeptName; readonly how: TableOutcome['how']; readonly ms: number }

/** Told how far all tables are: 0..1 of the work, and what is under way. */
export type OnTablesProgress = (share: number, what: string) => void

/** A table takes a few seconds on a slow machine; one that takes longer than this is not coming. */
const TABLE_MS_MAX = 300_000
const PROGRESS_EVERY_MS = 100
const PERMILLE = 1_000

/**
 * @param nAtOnce how many threads there are
 * @param data names the tables in `data.tables`
 * @returns their stories; rejects when a table cannot be made
 */
export async function bringTables(
  threads: SearchThreads,
  nAtOnce: number,
  data: ThreadData,
  log: Pick<Logger, 'info' | 'warn'>,
  onProgress?: OnTablesProgress,
): Promise<TableStory[]> {
  const names = KEPT_NAMES.filter((name) => data.tables[name] !== undefined)
  const timer = onProgress && setInterval(() => onProgress(shareDone(names, data), 'search tables'), PROGRESS_EVERY_MS)
  try {
    const stories: TableStory[] = []
    const left = names.values()
    // Each thread takes the longest that is left: they end at about the same time.
    const bringOneAfterTheOther = async () => {
      for (const name of left) stories.push(await bringTable(threads, data.folder, name, log))
    }
    await Promise.all(Array.from({ length: nAtOnce }, bringOneAfterTheOther))
    return stories
  } finally {
    clearInterval(timer)
  }
}

async function bringTable(
  threads: SearchThreads,
  folder: string,
  name: KeptName,
  log: Pick<Logger, 'info' | 'warn'>,
): Promise<TableStory> {
  const task = { kind: 'table', name } as const
  const first = await threads.run(task, TABLE_MS_MAX)
  // A thread that died has left nothing behind; once more with the one in its place.
  const outcome = first.ok ? first : await threads.run(task, TABLE_MS_MAX)
  if (!outcome.ok) throw new Error(`The search table ${name} could not be made: ${outcome.error}`)
  const { how, wrong, notKept, ms } = outcome.value
  const file = `${basename(folder)}/${name}.bin`
  if (wrong !== undefined)
    log.warn({ file, wrong }, `the search table ${file} could not be used (${wrong}) and was made again`)
  if (notKept !== undefined) {
    log.warn(
      { file, notKept },
      `the search table ${file} could not be kept (${notKept}) and will be made again at the next start`,
    )
  }
  log.info({ file, how, ms: Math.round(ms) }, 'a search table is in memory')
  return { name, how, ms }
}

function shareDone(names: readonly KeptName[], { permille }: ThreadData): number {
  const nBytes = (name: KeptName) => bytesOfTable(name)
  const done = (name: KeptName) => Atomics.load(permille, KEPT_NAMES.indexOf(name)) / PERMILLE
  const sum = (of: (name: KeptName) => number) => names.reduce((total, name) => total + of(name), 0)
  return sum((name) => nBytes(name) * done(name)) / sum(nBytes)
}

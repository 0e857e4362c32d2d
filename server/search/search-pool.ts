/**
 * Searches in threads: shortest ways over several stages, and setups. The tables they rest on are read from the data folder,
 * or made and kept there; all threads share them. What is looked up is answered at once, without a thread.
 */

import { availableParallelism } from 'node:os'
import { join } from 'node:path'
import type { Logger } from 'pino'
import type { CubePosition } from '../../engine/cube/cube-position.ts'
import type { Stage } from '../../engine/method/stages.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import { openShortestSolutions } from '../../engine/search/par/open-shortest-solutions.ts'
import type { Setup, SetupFault } from '../../engine/search/setup/find-setup.ts'
import type { RoundSecrets } from '../../engine/search/setup/gives-nothing-away.ts'
import type { ShortestAnswer } from '../../engine/search/shortest/shortest-answer.ts'
import { bringTables, type OnTablesProgress, type TableStory } from './bring-tables.ts'
import { KEPT_NAMES, type KeptName } from './kept-names.ts'
import { isLookedUp, lookUpShortest } from './look-up-shortest.ts'
import { newStopFlag, raiseStop } from './search-stop.ts'
import type { FromThread, SearchBudget, StopFlag, ThreadData, ToThread } from './search-thread-messages.ts'
import { startSearchThreads } from './search-threads.ts'
import { bytesOfTable } from './table-hashes.ts'
import { type Waiting, WaitingLine } from './waiting-line.ts'

/** Why a search gave no answer. */
export type SearchFault = {
  /**
   * `search/too-busy`: too many are waiting. Do: ask again later.
   * `search/stopped`: it was called off before anything was found, or the program is ending. Do: nothing.
   * `search/failed`: a thread died, or the tables could not be made; the log says more. Do: ask again.
   */
  readonly code: 'search/too-busy' | 'search/stopped' | 'search/failed'
}

/** How short can it be? Beyond one stage, `budgetMs` after a thread takes it up the best known line is the answer. */
export type ShortestTask = SearchBudget & {
  /** Any legal position, in any hold. */
  readonly position: CubePosition
  readonly to: Stage
  /** Calls it off: while it waits, it is answered with `search/stopped`; later, with the best known line within some 50 ms. */
  readonly signal?: AbortSignal
}

/** A setup for this start. */
export type SetupTask = SearchBudget & {
  /** Any legal position, in any hold. */
  readonly position: CubePosition
  readonly secrets?: RoundSecrets
  /** Calls it off: it is answered with `search/stopped`, unless it is there already. */
  readonly signal?: AbortSignal
}

/** Threads with their tables. */
export type SearchPool = {
  /** Settles when all tables are in memory: how each came there. Rejects when they cannot be; then every search fails. */
  readonly ready: Promise<readonly TableStory[]>
  /** Waits for `ready`, unless the answer is looked up. */
  shortest(task: ShortestTask): Promise<Result<ShortestAnswer, SearchFault>>
  /** Waits for `ready`. */
  setup(task: SetupTask): Promise<Result<Setup, SetupFault | SearchFault>>
  /** Calls everything off and ends the threads. */
  close(): Promise<void>
}

/** Where and how to search. */
export type SearchPoolOptions = {
  /** Tables are kept in its folder `search-tables`. */
  readonly dataDir: string
  readonly log: Pick<Logger, 'info' | 'warn'>
  /** Two to four by default, one fewer than there are cores. */
  readonly nThreads?: number
  /** Only these tables; all by default. What rests on others must not be asked. */
  readonly tables?: readonly KeptName[]
  /** Told every tenth of a second while tables are made or read. */
  readonly onProgress?: OnTablesProgress
  /** So many long searches at a time, all but one thread by default: a short one always finds a thread soon. */
  readonly nLongAtOnce?: number
  /** Another thread than the project's own, for tests. */
  readonly threadFile?: URL
  /** How long after its budget a thread counts as hanging; for tests. */
  readonly graceMs?: number
}

/** A search with a larger budget is a long one. */
const SHORT_MS_MAX = 2_000
/** Searches of ten seconds each, four at a time: the last in line waits less than three minutes. */
const WAITING_MAX = 64
const THREADS_MIN = 2
const THREADS_MAX = 4
/** Opening what a new thread needs, and half a second for a setup past its time, on a slow and busy machine. */
const GRACE_MS = 20_000
/** After so long a search that was told to stop is ended by force. */
const CLOSING_MS_MAX = 1_000

const OWN_THREAD_FILE = new URL(
  import.meta.url.endsWith('.js') ? './search-thread.js' : './search-thread-from-source.mjs',
  import.meta.url,
)

/** Starts threads, which begin at once to bring the tables to memory. */
export function openSearchPool(options: SearchPoolOptions): SearchPool {
  const { dataDir, log, tables = KEPT_NAMES, graceMs = GRACE_MS, threadFile = OWN_THREAD_FILE } = options
  const { nThreads = Math.min(THREADS_MAX, Math.max(THREADS_MIN, availableParallelism() - 1)) } = options
  const data: ThreadData = {
    folder: join(dataDir, 'search-tables'),
    tables: Object.fromEntries(tables.map((name) => [name, new SharedArrayBuffer(bytesOfTable(name))])),
    permille: new Int32Array(new SharedArrayBuffer(KEPT_NAMES.length * Int32Array.BYTES_PER_ELEMENT)),
  }
  const onDeath = (fault: string) => log.warn({ fault }, 'a search thread died')
  const threads = startSearchThreads({ threadFile, nThreads, data, onDeath })
  const { nLongAtOnce = Math.max(1, nThreads - 1) } = options
  const line = new WaitingLine(nThreads, WAITING_MAX, nLongAtOnce)
  const underWay = new Map<StopFlag, Promise<void>>()
  let phase: 'open' | 'without-tables' | 'closed' = 'open'

  // What is looked up takes a tenth of a second to open: now, while nobody plays, rather than at the first question.
  void openShortestSolutions()
  const ready = bringTables(threads, nThreads, data, log, options.onProgress).then(async (stories) => {
    // A thread that has made a table keeps what it made on the way; a new one does not.
    if (stories.some(({ how }) => how !== 'read')) await threads.renew()
    return stories
  })
  ready.then(
    () => line.open(),
    (fault: unknown) => {
      if (phase === 'closed') return
      log.warn({ fault: String(fault) }, 'there will be no searches')
      phase = 'without-tables'
      line.clear()
    },
  )

  function search<Task extends Extract<ToThread, { stop: StopFlag }>>(
    task: Task,
    signal: AbortSignal | undefined,
  ): Promise<Result<FromThread[Task['kind']], SearchFault>> {
    if (phase !== 'open' || signal?.aborted) return Promise.resolve(err({ code: refusal() }))
    return new Promise((resolve) => {
      const answer = (result: Result<FromThread[Task['kind']], SearchFault>) => {
        signal?.removeEventListener('abort', onAbort)
        resolve(result)
      }
      const waiting: Waiting = {
        isLong: task.budgetMs > SHORT_MS_MAX,
        refuse: () => answer(err({ code: refusal() })),
        start: async () => {
          const done = threads.run(task, task.budgetMs + graceMs).then((result) => {
            if (result.ok) return answer(result)
            if (phase === 'closed') return answer(err({ code: 'search/stopped' }))
            log.warn({ fault: result.error, kind: task.kind }, 'a search failed')
            answer(err({ code: 'search/failed' }))
          })
          underWay.set(task.stop, done)
          await done
          underWay.delete(task.stop)
        },
      }
      const onAbort = () => {
        if (!line.leave(waiting)) raiseStop(task.stop)
      }
      signal?.addEventListener('abort', onAbort, { once: true })
      if (!line.join(waiting)) answer(err({ code: 'search/too-busy' }))
    })
  }
  const refusal = () => (phase === 'without-tables' ? 'search/failed' : 'search/stopped')

  return {
    ready,
    shortest: async ({ position, to, signal, ...budget }) => {
      if (isLookedUp(position, to)) return lookUp(position, to, log)
      return search(
        { kind: 'shortest', position: Uint8Array.from(position), to, stop: newStopFlag(), ...budget },
        signal,
      )
    },
    setup: async ({ position, secrets, signal, ...budget }) => {
      const stop = newStopFlag()
      const answer = await search(
        { kind: 'setup', position: Uint8Array.from(position), secrets, stop, ...budget },
        signal,
      )
      return answer.ok ? answer.value : answer
    },
    close: async () => {
      phase = 'closed'
      line.clear()
      for (const stop of underWay.keys()) raiseStop(stop)
      await Promise.race([Promise.all(underWay.values()), after(CLOSING_MS_MAX)])
      await threads.close()
    },
  }
}

async function lookUp(
  position: CubePosition,
  to: Stage,
  log: Pick<Logger, 'warn'>,
): Promise<Result<ShortestAnswer, SearchFault>> {
  const solutions = await openShortestSolutions()
  if (solutions.ok) return ok(lookUpShortest(position, to, solutions.value))
  log.warn({ fault: solutions.error }, 'the shipped solutions cannot be read')
  return err({ code: 'search/failed' })
}

function after(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms).unref())
}

/**
 * Threads that answer one task each at a time, and are replaced when they die. Nobody waits for ever: a task that takes
 * longer than it said ends its thread and fails.
 */

import { Piscina } from 'piscina'
import { err, ok, type Result } from '../../engine/result.ts'
import type { FromThread, ThreadData, ToThread } from './search-thread-messages.ts'

/** Threads under way. */
export type SearchThreads = {
  /**
   * @param msMax a thread that has not answered by then hangs
   * @returns the answer, or why there is none: the thread died, hung, or ran into a bug of ours
   */
  run<Task extends ToThread>(task: Task, msMax: number): Promise<Result<FromThread[Task['kind']], string>>
  /** Ends the threads, and puts new ones in their place, which know nothing and hold no memory. */
  renew(): Promise<void>
  /** Ends the threads; what they were doing fails. */
  close(): Promise<void>
}

/** What threads are started with. */
export type ThreadOptions = {
  /** The built thread, or its source under tsx. */
  readonly threadFile: URL
  readonly nThreads: number
  readonly data: ThreadData
  /** Told when a thread dies while it has nothing to do. */
  readonly onDeath: (fault: string) => void
}

/** A third of the event loop's share where both want a processor: a class at play goes before a search. */
const NICE = 5

/** A timer of more milliseconds than 31 bits hold would be over at once. */
const TIMER_MS_MAX = 2 ** 31 - 1

/** Starts threads. They keep the process alive only while they have something to do. */
export function startSearchThreads(options: ThreadOptions): SearchThreads {
  let pool = start(options)
  let isClosed = false
  return {
    run: async (task, msMax) => {
      // A pool that has ended would begin anew.
      if (isClosed) return err('the threads have ended')
      const late = new AbortController()
      const timer = setTimeout(() => late.abort(`no answer within ${msMax} ms`), Math.min(msMax, TIMER_MS_MAX))
      try {
        return ok(await pool.run(task, { signal: late.signal }))
      } catch (fault) {
        return err(late.signal.aborted ? String(late.signal.reason) : String(fault))
      } finally {
        clearTimeout(timer)
      }
    },
    renew: async () => {
      if (isClosed) return
      const old = pool
      pool = start(options)
      await old.destroy()
    },
    close: () => {
      isClosed = true
      return pool.destroy()
    },
  }
}

function start({ threadFile, nThreads, data, onDeath }: ThreadOptions): Piscina {
  const isSource = threadFile.pathname.endsWith('.mjs')
  const pool = new Piscina({
    filename: threadFile.href,
    workerData: data,
    minThreads: nThreads,
    maxThreads: nThreads,
    idleTimeout: Number.POSITIVE_INFINITY,
    // An idle thread waits for messages as usual: nothing is asked so often that sleeping on shared memory would pay.
    atomics: 'disabled',
    niceIncrement: NICE,
    // The source thread reads TypeScript by itself; the ways of the program that starts it would do so once more.
    ...(isSource ? { execArgv: [] } : {}),
  })
  pool.on('error', (fault) => onDeath(String(fault)))
  return pool
}

/** How a page asks for something until it is told: one question at a time, and never faster than it may. */

import type { Refusal } from '../../engine/wire/refusal.ts'

/** After this a question that got no useful answer is asked again. */
export const RETRY_MS = 1_000

/** How long to wait before the same message is sent again: as long as the server says, if it says so. */
export function pauseAfter(refusal: Refusal): number {
  return 'retryAfterMs' in refusal ? refusal.retryAfterMs : RETRY_MS
}

/**
 * Turns a task into one that can be asked for at any time, by many, and never runs twice at once. Asked for while it
 * runs, it runs once more afterwards: what it is told then is newer than the asking.
 *
 * @param task gives the milliseconds after which it has to be tried again, or null when it is done
 */
export function keepTrying(task: () => Promise<number | null>): () => void {
  let isRunning = false
  let isAskedAgain = false
  let timer: ReturnType<typeof setTimeout> | undefined

  async function run(): Promise<void> {
    if (isRunning) {
      isAskedAgain = true
      return
    }
    clearTimeout(timer)
    isRunning = true
    try {
      let againInMs: number | null
      do {
        isAskedAgain = false
        againInMs = await task()
      } while (isAskedAgain && againInMs === null)
      if (againInMs !== null) timer = setTimeout(() => void run(), againInMs)
    } finally {
      isRunning = false
    }
  }

  return () => void run()
}

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { keepTrying, pauseAfter, RETRY_MS } from '../../../web/live/keep-trying.ts'

beforeEach(() => void vi.useFakeTimers())
afterEach(() => void vi.useRealTimers())

/** A task whose end is in the hands of the test. */
function aTask() {
  const ends: ((againInMs: number | null) => void)[] = []
  return {
    start: keepTrying(() => new Promise((resolve) => ends.push(resolve))),
    nStarted: () => ends.length,
    async end(againInMs: number | null) {
      ends[ends.length - 1](againInMs)
      await vi.advanceTimersByTimeAsync(0)
    },
  }
}

test('[PG2] however often it is asked for while it runs, it runs once more afterwards, and then no more', async () => {
  const task = aTask()
  for (let time = 0; time < 5; time++) task.start()
  expect(task.nStarted()).toBe(1)
  await task.end(null)
  expect(task.nStarted()).toBe(2)
  await task.end(null)
  await vi.advanceTimersByTimeAsync(60_000)
  expect(task.nStarted()).toBe(2)
})

test('[PG2] what has to be tried again is, after its pause; who asks sooner takes that place', async () => {
  const task = aTask()
  task.start()
  await task.end(500)
  await vi.advanceTimersByTimeAsync(499)
  expect(task.nStarted()).toBe(1)
  await vi.advanceTimersByTimeAsync(1)
  expect(task.nStarted()).toBe(2)
  await task.end(500)
  task.start()
  expect(task.nStarted()).toBe(3)
  await task.end(null)
  await vi.advanceTimersByTimeAsync(60_000)
  expect(task.nStarted()).toBe(3)
})

test('[PG2] the pause is the one that the server names, else a second', () => {
  expect(pauseAfter({ code: 'wire/too-fast', retryAfterMs: 3_210 })).toBe(3_210)
  expect(pauseAfter({ code: 'server/fault' })).toBe(RETRY_MS)
})

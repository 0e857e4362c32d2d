/**
 * Many students who turn at a steady rate, open loop: each turn is due at its own moment whether or not the answer to the
 * last one has come, and its latency counts from that moment. A slow server cannot slow its own measurement down.
 */

import { monitorEventLoopDelay } from 'node:perf_hooks'
import { Latencies } from './latencies.ts'
import type { RawClient } from './raw-client.ts'

/** The generator looks for due turns this often; added to no latency, for those count from the moment due. */
const LOOK_EVERY_MS = 1
const STEPS = ['R', 'U', 'F', 'D', 'L', 'B'] as const

export type TurningStudent = {
  client: RawClient
  roundId: string
  nSent: number
  nHeld: number
  dueAtMs: number
  sentAtMs: Map<number, number>
}

export type TurningResult = {
  acknowledgements: Latencies
  nSent: number
  nAnswered: number
  nRefused: number
  /** 99th percentile of the generator's own event loop delay; over 20 ms the run says little about the server. */
  ownDelayMs: number
}

export async function turn(students: readonly TurningStudent[], rate: number, seconds: number): Promise<TurningResult> {
  const acknowledgements = new Latencies()
  const delay = monitorEventLoopDelay({ resolution: 2 })
  const everyMs = 1000 / rate
  let nAnswered = 0
  let nRefused = 0
  let nSent = 0
  const beganAtMs = performance.now()
  for (const [index, student] of students.entries()) student.dueAtMs = beganAtMs + (everyMs * index) / students.length
  delay.enable()
  await new Promise<void>((resolve) => {
    const timer = setInterval(() => {
      const nowMs = performance.now()
      if (nowMs - beganAtMs > seconds * 1000) {
        clearInterval(timer)
        resolve()
        return
      }
      for (const student of students) {
        while (student.dueAtMs <= nowMs) {
          const dueAtMs = student.dueAtMs
          student.dueAtMs += everyMs
          const from = student.nSent++
          student.sentAtMs.set(from + 1, dueAtMs)
          nSent++
          const message = { roundId: student.roundId, tryNumber: 1, from, steps: [STEPS[from % STEPS.length]] }
          student.client.send('turns:send', message, (value) => {
            const answer = value as { ok: boolean; value: { held: number } }
            nAnswered++
            if (!answer.ok) nRefused++
            else {
              acknowledgements.add(performance.now() - dueAtMs)
              student.nHeld = Math.max(student.nHeld, answer.value.held)
            }
          })
        }
      }
    }, LOOK_EVERY_MS)
  })
  delay.disable()
  // What is still on its way gets a moment to arrive.
  for (let left = 100; left > 0 && nAnswered < nSent; left--) await new Promise((resolve) => setTimeout(resolve, 50))
  return { acknowledgements, nSent, nAnswered, nRefused, ownDelayMs: delay.percentile(99) / 1e6 }
}

/**
 * The server's clock, as this page knows it. Asked after every reconnect, when the page becomes visible, and twice a
 * minute, because clocks of cheap machines drift and sleep.
 */

import { useEffect, useState } from 'react'
import { create } from 'zustand'
import { type ClockSample, clockOffsetMs, delayOf } from './clock-offset.ts'
import { ask, socket } from './socket.ts'

/** Questions of one estimation. */
const SAMPLES = 5
/** Far enough apart that one hiccup of the network does not hold up all of them. */
const BETWEEN_SAMPLES_MS = 120
const ASK_AGAIN_MS = 30_000

/** How long a message takes to the server and back, for who wants to see it; null until that is known. */
export const useDelayMs = create<{ readonly delayMs: number | null }>(() => ({ delayMs: null }))

/** Null until the first answer. */
let offsetMs: number | null = null
let newestEstimation = 0
let isFollowing = false

/** Milliseconds since 1970 by the server's clock. */
export function serverNowMs(): number {
  return Date.now() + (offsetMs ?? 0)
}

/** The server's clock now, looked at again every `everyMs`. */
export function useServerNow(everyMs = 250): number {
  const [nowMs, setNowMs] = useState(serverNowMs)
  useEffect(() => {
    const timer = setInterval(() => setNowMs(serverNowMs()), everyMs)
    return () => clearInterval(timer)
  }, [everyMs])
  return nowMs
}

/** Starts asking; once a page. */
export function followServerClock(): void {
  if (isFollowing) return
  isFollowing = true
  socket.on('connect', () => void estimate())
  setInterval(() => void estimate(), ASK_AGAIN_MS)
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void estimate()
  })
}

/**
 * Asks a few times, and corrects the clock at the end, so that one slow answer never makes it jump in a countdown. Only
 * the very first answer counts at once: until then the page knows nothing.
 */
async function estimate(): Promise<void> {
  const estimation = ++newestEstimation
  const samples: ClockSample[] = []
  while (samples.length < SAMPLES && socket.connected) {
    const askedAtMs = Date.now()
    const answer = await ask('clock:ask', {})
    if (!answer.ok) break
    samples.push({ askedAtMs, answeredAtMs: Date.now(), serverMs: answer.value.serverMs })
    if (offsetMs === null) offsetMs = clockOffsetMs(samples)
    await new Promise((resolve) => setTimeout(resolve, BETWEEN_SAMPLES_MS))
    // Begun again meanwhile: on a new connection, or because the page was looked at.
    if (estimation !== newestEstimation) return
  }
  if (samples.length === 0) return
  offsetMs = clockOffsetMs(samples)
  useDelayMs.setState({ delayMs: delayOf(samples) })
}

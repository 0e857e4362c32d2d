/**
 * The server's clock, as this page knows it. The page asks the time a few times; the answer that came back fastest tells
 * best how far the two clocks are apart (the server read its clock about half-way). Asked again after every reconnect, when
 * the page becomes visible, and twice a minute, because clocks of cheap machines drift and sleep.
 */

import { useEffect, useState } from 'react'
import { ask, socket } from './socket.ts'

const SAMPLES = 5
const BETWEEN_SAMPLES_MS = 120
const ASK_AGAIN_MS = 30_000

let offsetMs = 0
let isFollowing = false

/** Milliseconds since 1970 by the server's clock. */
export function serverNowMs(): number {
  return Date.now() + offsetMs
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

async function estimate(): Promise<void> {
  let best: { roundTripMs: number; offsetMs: number } | null = null
  for (let sample = 0; sample < SAMPLES && socket.connected; sample++) {
    const sentAtMs = Date.now()
    const answer = await ask('clock:ask', {})
    const roundTripMs = Date.now() - sentAtMs
    if (!answer.ok) return
    if (best === null || roundTripMs < best.roundTripMs) {
      best = { roundTripMs, offsetMs: Math.round(answer.value.serverMs - sentAtMs - roundTripMs / 2) }
      offsetMs = best.offsetMs
    }
    await new Promise((resolve) => setTimeout(resolve, BETWEEN_SAMPLES_MS))
  }
}

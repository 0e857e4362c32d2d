/** After 25 minutes of practice hands and eyes are reminded of a rest. Time in which the page is hidden is rest. */

import { useEffect, useState } from 'react'

/** Practised so long, a rest is due. A length that schools work with; common practice, no source. */
export const BREAK_AFTER_MS = 25 * 60_000
/** How often the time is added up. */
const LOOK_EVERY_MS = 5_000

/**
 * @param practisedMs so far, and since the last rest
 * @param passedMs since it was added up last; a sleeping device lets hours pass at once, which is a rest
 * @returns what has been practised since the last rest
 */
export function practisedAfter(practisedMs: number, passedMs: number, isSeen: boolean): number {
  if (passedMs > RESTED_AFTER_MS) return 0
  return isSeen ? practisedMs + passedMs : practisedMs
}

const RESTED_AFTER_MS = 5 * 60_000

/** @returns whether a rest is due, and what to call when the note was read */
export function useBreakNote(): readonly [isDue: boolean, rested: () => void] {
  const [practisedMs, setPractisedMs] = useState(0)
  useEffect(() => {
    let last = performance.now()
    const timer = setInterval(() => {
      const now = performance.now()
      const passedMs = now - last
      last = now
      setPractisedMs((ms) => practisedAfter(ms, passedMs, document.visibilityState === 'visible'))
    }, LOOK_EVERY_MS)
    return () => clearInterval(timer)
  }, [])
  return [practisedMs >= BREAK_AFTER_MS, () => setPractisedMs(0)]
}

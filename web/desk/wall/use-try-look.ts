/** What the chosen student has turned so far: asked for when it is chosen, and again whenever something new has come in. */

import { useEffect, useRef, useState } from 'react'
import type { SeatId } from '../../../engine/contest/ids.ts'
import type { TryLook } from '../../../engine/wire/views.ts'

/** Quick fingers cost no more than three questions a second. */
const ASK_EVERY_MS = 330

/**
 * @param news changes when there is something new of this student: the cube, the round
 * @param lookAt `deskActs.lookAt`
 */
export function useTryLook(
  seatId: SeatId,
  news: string,
  lookAt: (seatId: SeatId) => Promise<TryLook | null>,
): TryLook | null {
  const [look, setLook] = useState<TryLook | null>(null)
  const askedAtMs = useRef(0)
  // biome-ignore lint/correctness/useExhaustiveDependencies: `news` is why it is asked again.
  useEffect(() => {
    let isOld = false
    const waitMs = Math.max(0, askedAtMs.current + ASK_EVERY_MS - performance.now())
    const timer = setTimeout(() => {
      askedAtMs.current = performance.now()
      void lookAt(seatId).then((answer) => {
        if (!isOld && answer !== null) setLook(answer)
      })
    }, waitMs)
    return () => {
      isOld = true
      clearTimeout(timer)
    }
  }, [seatId, news, lookAt])
  return look?.seatId === seatId ? look : null
}

/** Lets lanes climb one step after another: a lane is inked first, then it goes, at most three at once. */

import { useEffect, useRef, useState } from 'react'
import { wantsStillness } from '../../ui/reduced-motion.ts'
import { nextOrder, sameOrder, withMembersOf } from './climb-order.ts'

export const CLIMB_MS = 900
/** Inking the squares takes 600 ms, raising the flag 420. */
const INKING_MS = 1_020
const CLIMBERS_MAX = 3

/** @param resetKey a new key shows the target at once: another round is not a climb */
export function useShownOrder(target: readonly string[], resetKey: string): readonly string[] {
  const [shown, setShown] = useState(target)
  const [shownKey, setShownKey] = useState(resetKey)
  const newest = useRef(target)
  const dueAtMs = useRef<number | null>(null)
  newest.current = target

  const isAnotherRound = shownKey !== resetKey
  if (isAnotherRound) {
    setShownKey(resetKey)
    setShown(target)
  }
  const order = isAnotherRound ? target : withMembersOf(target, shown)
  const isSettled = sameOrder(order, target)
  const goal = target.join(' ')

  // biome-ignore lint/correctness/useExhaustiveDependencies: `goal` and `shown` stand for the two orders.
  useEffect(() => {
    if (isSettled) {
      dueAtMs.current = null
      return
    }
    if (wantsStillness()) {
      setShown(target)
      return
    }
    dueAtMs.current ??= performance.now() + INKING_MS
    const timer = setTimeout(() => {
      dueAtMs.current = performance.now() + CLIMB_MS
      setShown((last) => nextOrder(withMembersOf(newest.current, last), newest.current, CLIMBERS_MAX))
    }, dueAtMs.current - performance.now())
    return () => clearTimeout(timer)
  }, [goal, shown, isSettled])

  return order
}

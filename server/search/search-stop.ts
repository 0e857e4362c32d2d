/** When a search has to end: it was told to, its time is up, or it has looked at enough positions. */

import { NODES_PER_ASKING } from '../../engine/search/two-phase/node-budget.ts'
import type { SearchBudget, StopFlag } from './search-thread-messages.ts'

const STOP = 1

/** @returns a flag that can be seen from all threads */
export function newStopFlag(): StopFlag {
  return new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT))
}

/** Tells the search that looks at this flag to come to an end. */
export function raiseStop(flag: StopFlag): void {
  Atomics.store(flag, 0, STOP)
}

/** Has it been told to? */
export function isStopRaised(flag: StopFlag): boolean {
  return Atomics.load(flag, 0) === STOP
}

/** @returns asked by a search every `NODES_PER_ASKING` positions: must it end? The time counts from now. */
export function searchEnd({ budgetMs, budgetNodes = Number.POSITIVE_INFINITY }: SearchBudget, flag: StopFlag) {
  const endsAtMs = performance.now() + budgetMs
  let nNodes = 0
  return (): boolean => {
    nNodes += NODES_PER_ASKING
    return nNodes > budgetNodes || isStopRaised(flag) || performance.now() >= endsAtMs
  }
}

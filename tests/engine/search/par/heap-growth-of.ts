/** What a piece of work leaves on the heap, a time. */

import { bytesPerPortion } from '../../cube/heap-growth.ts'

const N_TIMES = 10_000

/** @returns bytes a time, the reading of the heap itself shared among them */
export function heapGrowthOf(work: () => void): number {
  const portion = () => {
    for (let time = 0; time < N_TIMES; time++) work()
  }
  return bytesPerPortion(portion, 25) / N_TIMES
}

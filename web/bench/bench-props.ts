/** What the bench is given: the state of its seat and what a child can do. */

import type { BenchLive, benchActs } from '../live/bench-live.ts'

export type BenchActs = typeof benchActs

export type BenchScreenProps = {
  readonly live: BenchLive
  readonly acts: BenchActs
  /** The server's clock now, in milliseconds; the screen is drawn again as it goes on. */
  readonly serverNowMs: number
  /** Gives the seat up, or what is left of it, and leads to the way in. */
  readonly onLeave: () => void
}

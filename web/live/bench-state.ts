/** What the bench knows: the one store that its screens read. Only bench-live.ts and bench-tries.ts write it. */

import { create } from 'zustand'
import type { GoneReason } from '../../engine/wire/from-server.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import type { BenchView } from '../../engine/wire/views.ts'
import type { LocalTry } from './local-try.ts'

export type BenchLive = {
  /** `waiting`: at the door, until the teacher opens it. `away`: seated, but without a connection just now; turning goes on and turns wait. */
  readonly status: 'connecting' | 'seatless' | 'waiting' | 'seated' | 'away' | 'gone'
  readonly view: BenchView | null
  /** Null while there is no round. */
  readonly mine: LocalTry | null
  readonly gone: GoneReason | null
  readonly outOfDate: boolean
  /** Turns of this round reached the server after its end and do not count. */
  readonly cameTooLate: boolean
  /** The teacher did not open the door. */
  readonly turnedAway: boolean
  /** The code that was typed last, so that nobody has to type it twice; null for none. */
  readonly lastCode: string | null
  /** The last refusal that concerns the child; cleared by dismiss(). */
  readonly refusal: Refusal | null
}

export const useBench = create<BenchLive>(() => ({
  status: 'connecting',
  view: null,
  mine: null,
  gone: null,
  outOfDate: false,
  cameTooLate: false,
  turnedAway: false,
  lastCode: null,
  refusal: null,
}))

/** What the bench is given, and what each of its faces gets of it. */

import type { ReactNode } from 'react'
import type { BenchLive, benchActs } from '../live/bench-live.ts'
import type { BenchSettings } from '../parts/bench-page/bench-settings.ts'
import type { OwnChoices } from './own-choices.ts'

export type BenchActs = typeof benchActs

export type BenchScreenProps = {
  readonly live: BenchLive
  readonly acts: BenchActs
  /** The server's clock now, in milliseconds; the screen is drawn again as it goes on. */
  readonly serverNowMs: number
  /** How long a message takes to the server and back, in milliseconds; null until that is known. */
  readonly delayMs: number | null
  /** Gives the seat up, or what is left of it, and leads to the way in. */
  readonly onLeave: () => void
}

/** What every face gets. */
export type FaceProps = Omit<BenchScreenProps, 'onLeave'> & {
  readonly liked: BenchSettings
  readonly onOpenLook: () => void
  readonly own: OwnChoices
  readonly onChoose: (change: Partial<OwnChoices>) => void
  /** Leads back to what the teacher shows; null while nothing is shown. */
  readonly seeShowing: ReactNode
}

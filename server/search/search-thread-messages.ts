/** What the server and the threads that search say to each other, typed both ways. */

import type { Stage } from '../../engine/method/stages.ts'
import type { Result } from '../../engine/result.ts'
import type { Setup, SetupFault } from '../../engine/search/setup/find-setup.ts'
import type { RoundSecrets } from '../../engine/search/setup/gives-nothing-away.ts'
import type { ShortestAnswer } from '../../engine/search/shortest/shortest-answer.ts'
import type { KeptName } from './kept-names.ts'
import type { TableOutcome } from './kept-table.ts'

/** Given to every thread when it starts; all of the memory is shared. */
export type ThreadData = {
  readonly folder: string
  /** What each table lies in; whole once its story has been told. */
  readonly tables: Readonly<Partial<Record<KeptName, SharedArrayBuffer>>>
  /** By place in `KEPT_NAMES`: how far the making of a table is, 0..1,000. */
  readonly permille: Int32Array
}

/** How long a search may go on. */
export type SearchBudget = {
  /** From when a thread takes it up. */
  readonly budgetMs: number
  /** Positions looked at, about: the same answer on any machine, as long as the time does not run out before. */
  readonly budgetNodes?: number
}

/** A place in shared memory through which a search is told to come to an end. */
export type StopFlag = Int32Array

/** A task for a thread. Positions are the bytes of a `CubePosition`. */
export type ToThread =
  | { readonly kind: 'table'; readonly name: KeptName }
  | (SearchBudget & {
      readonly kind: 'shortest'
      readonly position: Uint8Array
      readonly to: Stage
      readonly stop: StopFlag
    })
  | (SearchBudget & {
      readonly kind: 'setup'
      readonly position: Uint8Array
      readonly secrets: RoundSecrets | undefined
      readonly stop: StopFlag
    })

/** What a thread answers to each kind of task. */
export type FromThread = {
  readonly table: TableOutcome & { readonly ms: number }
  readonly shortest: ShortestAnswer
  /** `search/stopped`: it was told to stop, and nothing was found yet. */
  readonly setup: Result<Setup, SetupFault | { readonly code: 'search/stopped' }>
}

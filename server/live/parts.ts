/** What the live rooms are given: time, chance, the record and the log. Tests give their own. */

import type { Logger } from 'pino'
import type { RandomSource } from '../../engine/chance/random-source.ts'
import type { SearchPool } from '../search/search-pool.ts'
import type { DurableRecord } from '../store/record.ts'
import type { StandstillWatch } from './standstill.ts'
import type { TeacherShelf } from './teacher-shelf.ts'

export type LiveParts = {
  readonly nowMs: () => number
  readonly record: DurableRecord
  readonly log: Logger
  /** A fresh, unpredictable source: one for each start, so that no start tells anything of another. */
  readonly newRandom: () => RandomSource
  /** Answers beside the event loop. */
  readonly search: Pick<SearchPool, 'shortest' | 'setup'>
  /** What teachers have put by: lesson plans and rosters. */
  readonly shelf: TeacherShelf
  /** Notices that the machine slept, or the process was frozen. */
  readonly standstill: StandstillWatch
  /** Identifier that no one has used. */
  readonly newId: () => string
  /** Where students go, best first, without the scheme: `192.0.2.7:3000`. */
  readonly addresses: () => readonly string[]
}

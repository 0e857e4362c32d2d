/** What the server and the writer's thread say to each other, typed both ways. */

import type { RoundId, TeacherId } from '../../engine/contest/ids.ts'
import type { Entry, Outcome, StoredRoom, StoredRound, StoredShelf } from './record.ts'

export type ToThread =
  | { kind: 'commit'; entries: readonly Entry[] }
  | { kind: 'read'; id: number; what: 'open-rooms' | 'last-alive' | 'shelf' }
  | { kind: 'read'; id: number; what: 'round'; roundId: RoundId }
  | { kind: 'read'; id: number; what: 'teacher-of-session'; tokenHash: string; openedSinceMs: number }
  | { kind: 'close' }

export type FromThread =
  | { kind: 'opened' }
  /** The data cannot be used; `message` is for a person. */
  | { kind: 'unusable'; message: string }
  | { kind: 'committed'; outcomes: Outcome[]; tookMs: number }
  | { kind: 'commit-failed'; code: string; message: string }
  | { kind: 'read'; id: number; value: StoredRoom[] | StoredRound | StoredShelf | TeacherId | number | null }
  | { kind: 'closed' }

/** What the server and the writer's thread say to each other, typed both ways. */

import type { TeacherId } from '../../engine/contest/ids.ts'
import type { Entry, Outcome, StoredRoom } from './record.ts'

export type ToThread =
  | { kind: 'commit'; entries: readonly Entry[] }
  | { kind: 'read'; id: number; what: 'open-rooms' | 'last-alive' }
  | { kind: 'read'; id: number; what: 'teacher-of-session'; tokenHash: string; openedSinceMs: number }
  | { kind: 'close' }

export type FromThread =
  | { kind: 'opened' }
  /** The data cannot be used; `message` is for a person. */
  | { kind: 'unusable'; message: string }
  | { kind: 'committed'; outcomes: Outcome[]; tookMs: number }
  | { kind: 'commit-failed'; code: string; message: string }
  | { kind: 'read'; id: number; value: StoredRoom[] | TeacherId | number | null }
  | { kind: 'closed' }

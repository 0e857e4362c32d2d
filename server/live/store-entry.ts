/** Stores what happens in a room, and turns a disk that refuses into the refusal that everybody is told. */

import type { RoomId } from '../../engine/contest/ids.ts'
import { err, ok, type Result } from '../../engine/result.ts'
import type { Refusal } from '../../engine/wire/refusal.ts'
import { type Entry, SavingPaused } from '../store/record.ts'
import type { LiveParts } from './parts.ts'

/** Resolves once the entry is on the disk, or with the reason why it is not. */
export type StoreEntry = (entry: Entry) => Promise<Result<null, Refusal>>

export function storeInRoom({ record, log }: LiveParts, roomId: RoomId): StoreEntry {
  return async (entry) => {
    try {
      const outcome = await record.write(entry)
      if (outcome === 'stored') return ok(null)
      log.error({ room: roomId, entry: entry.kind, outcome }, 'the record disagrees')
      return err(outcome === 'closed' ? { code: 'contest/round-over' } : { code: 'server/fault' })
    } catch (fault) {
      if (!(fault instanceof SavingPaused)) throw fault
      log.error({ room: roomId, entry: entry.kind, reason: fault.message }, 'saving is paused')
      return err({ code: 'store/saving-paused' })
    }
  }
}

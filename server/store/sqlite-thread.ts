/**
 * The writer's thread. It alone holds the data file: syncing a commit takes milliseconds on a busy disk, and on the event
 * loop those would be everybody's milliseconds.
 */

import { parentPort, workerData } from 'node:worker_threads'
import type { Entry } from './record.ts'
import { makeCommitter } from './sqlite-commit.ts'
import { openDataFile, UnusableData } from './sqlite-open.ts'
import { makeReader } from './sqlite-read.ts'
import type { FromThread, ToThread } from './sqlite-thread-messages.ts'

/** Entries that take a name out of the record, or put another in its place. */
const ERASING: ReadonlySet<Entry['kind']> = new Set([
  'seat-removed',
  'seat-renamed',
  'names-forgotten',
  'roster-kept',
  'roster-removed',
])
const ERASED_WITHIN_MS = 5_000

const port = parentPort
if (port === null) throw new Error('sqlite-thread runs as a worker only')
const say = (message: FromThread) => port.postMessage(message)

try {
  const { dataDir } = workerData as { dataDir: string }
  const database = openDataFile(dataDir)
  const committer = makeCommitter(database)
  const reader = makeReader(database)

  /** What was erased in the data file still stands in the log before it: the log is emptied soon afterwards. */
  let emptying: NodeJS.Timeout | null = null
  const emptyLogSoon = () => {
    emptying ??= setTimeout(() => {
      emptying = null
      emptyLog()
    }, ERASED_WITHIN_MS)
  }
  const emptyLog = () => {
    try {
      database.pragma('wal_checkpoint(TRUNCATE)')
    } catch {
      // A disk that refuses: everything that was committed is in the log, and the next time comes.
    }
  }

  const read = (message: Extract<ToThread, { kind: 'read' }>) => {
    if ('tokenHash' in message) return reader.teacherOfSession(message.tokenHash, message.openedSinceMs)
    switch (message.what) {
      case 'open-rooms':
        return reader.openRooms()
      case 'round':
        return reader.round(message.roundId)
      case 'shelf':
        return reader.shelf()
      case 'last-alive':
        return reader.lastAliveMs()
      default:
        return message satisfies never
    }
  }

  port.on('message', (message: ToThread) => {
    switch (message.kind) {
      case 'commit': {
        const beganAt = performance.now()
        try {
          const outcomes = committer.commit(message.entries)
          if (message.entries.some((entry) => ERASING.has(entry.kind))) emptyLogSoon()
          say({ kind: 'committed', outcomes, tookMs: performance.now() - beganAt })
        } catch (fault) {
          say({
            kind: 'commit-failed',
            code: (fault as { code?: string }).code ?? 'unknown',
            message: (fault as Error).message,
          })
        }
        return
      }
      case 'read': {
        say({ kind: 'read', id: message.id, value: read(message) })
        return
      }
      case 'close':
        if (emptying !== null) clearTimeout(emptying)
        emptyLog()
        database.close()
        say({ kind: 'closed' })
        port.close()
    }
  })
  say({ kind: 'opened' })
} catch (fault) {
  if (!(fault instanceof UnusableData)) throw fault
  say({ kind: 'unusable', message: fault.message })
}

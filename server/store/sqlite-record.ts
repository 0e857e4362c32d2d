/**
 * The record in SQLite, seen from the event loop: entries wait in a queue, and one batch at a time is with the writer's
 * thread. While a batch is being synced the next one gathers, so commits are grouped by the disk's own pace: no timer,
 * no waiting on a quiet server, hundreds of turns a commit on a busy one.
 */

import { Worker } from 'node:worker_threads'
import type { RoundId, TeacherId } from '../../engine/contest/ids.ts'
import {
  type DurableRecord,
  type Entry,
  type Outcome,
  SavingPaused,
  type StoredRoom,
  type StoredRound,
  type StoredShelf,
} from './record.ts'
import { UnusableData } from './sqlite-open.ts'
import type { FromThread, ToThread } from './sqlite-thread-messages.ts'

/** Entries of one commit. At 3,060 turns a second and 8 ms a commit about 25 gather; this is the bound, not the habit. */
const BATCH_ENTRIES_MAX = 512
/** While the disk refuses, one small write a second asks whether it has come back. */
const PROBE_EVERY_MS = 1_000

type Waiting = { entry: Entry; resolve: (outcome: Outcome) => void; reject: (fault: Error) => void }

export type SqliteRecordOptions = {
  dataDir: string
  /** The built thread, or its source under tsx. */
  threadFile: URL
  /** Told of every commit, for the metrics. */
  onCommit?: (commit: { nEntries: number; tookMs: number }) => void
}

/** Opens the record. Rejects with `UnusableData` when the server must not start on this folder. */
export async function openSqliteRecord(options: SqliteRecordOptions): Promise<DurableRecord> {
  const worker = new Worker(options.threadFile, { workerData: { dataDir: options.dataDir } })
  const first = await new Promise<FromThread>((resolve, reject) => {
    worker.once('error', reject)
    worker.once('message', resolve)
  })
  if (first.kind !== 'opened') {
    await worker.terminate()
    throw new UnusableData(first.kind === 'unusable' ? first.message : 'The record did not open.')
  }
  worker.removeAllListeners('error')
  return new SqliteRecord(worker, options.onCommit)
}

class SqliteRecord implements DurableRecord {
  saving = true
  readonly #worker: Worker
  readonly #onCommit: SqliteRecordOptions['onCommit']
  readonly #listeners = new Set<(saving: boolean) => void>()
  readonly #reads = new Map<number, (value: never) => void>()
  #queue: Waiting[] = []
  #underWay: Waiting[] = []
  #nextRead = 1
  #probe: NodeJS.Timeout | null = null
  #idle: (() => void) | null = null
  #closed: (() => void) | null = null
  #closing: Promise<void> | null = null

  constructor(worker: Worker, onCommit: SqliteRecordOptions['onCommit']) {
    this.#worker = worker
    this.#onCommit = onCommit
    worker.on('message', (message: FromThread) => this.#hear(message))
    // A dead writer is an outage: whoever waits is told, and the process ends so that it can be started again.
    worker.on('error', (fault) => {
      this.#fail(fault)
      throw fault
    })
  }

  write(entry: Entry): Promise<Outcome> {
    return new Promise((resolve, reject) => {
      this.#queue.push({ entry, resolve, reject })
      this.#send()
    })
  }

  loadOpenRooms(): Promise<StoredRoom[]> {
    return this.#read((id) => ({ kind: 'read', id, what: 'open-rooms' }))
  }

  loadRound(roundId: RoundId): Promise<StoredRound | null> {
    return this.#read((id) => ({ kind: 'read', id, what: 'round', roundId }))
  }

  loadShelf(): Promise<StoredShelf> {
    return this.#read((id) => ({ kind: 'read', id, what: 'shelf' }))
  }

  teacherOfSession(tokenHash: string, openedSinceMs: number): Promise<TeacherId | null> {
    return this.#read((id) => ({ kind: 'read', id, what: 'teacher-of-session', tokenHash, openedSinceMs }))
  }

  lastAliveMs(): Promise<number | null> {
    return this.#read((id) => ({ kind: 'read', id, what: 'last-alive' }))
  }

  onSavingChanged(listener: (saving: boolean) => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  close(): Promise<void> {
    this.#closing ??= this.#close()
    return this.#closing
  }

  async #close(): Promise<void> {
    if (this.#underWay.length + this.#queue.length > 0) await new Promise<void>((resolve) => (this.#idle = resolve))
    if (this.#probe !== null) clearInterval(this.#probe)
    await new Promise<void>((resolve) => {
      this.#closed = resolve
      this.#say({ kind: 'close' })
    })
    await this.#worker.terminate()
  }

  #say(message: ToThread): void {
    this.#worker.postMessage(message)
  }

  #read<T>(ask: (id: number) => ToThread): Promise<T> {
    const id = this.#nextRead++
    return new Promise((resolve) => {
      this.#reads.set(id, resolve as (value: never) => void)
      this.#say(ask(id))
    })
  }

  #send(): void {
    if (this.#underWay.length > 0 || this.#queue.length === 0) return
    this.#underWay = this.#queue.splice(0, BATCH_ENTRIES_MAX)
    this.#say({ kind: 'commit', entries: this.#underWay.map((waiting) => waiting.entry) })
  }

  #hear(message: FromThread): void {
    switch (message.kind) {
      case 'committed': {
        const done = this.#underWay
        this.#underWay = []
        this.#onCommit?.({ nEntries: done.length, tookMs: message.tookMs })
        this.#send()
        this.#setSaving(true)
        for (const [index, waiting] of done.entries()) waiting.resolve(message.outcomes[index])
        break
      }
      case 'commit-failed':
        this.#fail(new SavingPaused(`${message.code}: ${message.message}`))
        this.#setSaving(false)
        break
      case 'read':
        this.#reads.get(message.id)?.(message.value as never)
        this.#reads.delete(message.id)
        break
      case 'closed':
        this.#closed?.()
        break
      case 'opened':
      case 'unusable':
        break
    }
    if (this.#underWay.length + this.#queue.length === 0) this.#idle?.()
  }

  /** Everything that waits fails together, so that no turn is stored behind one that was not. */
  #fail(fault: Error): void {
    const lost = [...this.#underWay, ...this.#queue]
    this.#underWay = []
    this.#queue = []
    for (const waiting of lost) waiting.reject(fault)
  }

  #setSaving(saving: boolean): void {
    if (this.saving === saving) return
    this.saving = saving
    if (saving && this.#probe !== null) {
      clearInterval(this.#probe)
      this.#probe = null
    }
    if (!saving) {
      // The time stands in the entry only to make it a real write; its value is not read while the server lives.
      this.#probe = setInterval(
        () => this.write({ kind: 'alive', atMs: Date.now() }).catch(() => undefined),
        PROBE_EVERY_MS,
      )
    }
    for (const listener of this.#listeners) listener(saving)
  }
}

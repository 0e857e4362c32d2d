/**
 * One table in a folder: read if its file is whole, else made and kept. The file is written under another name in the same
 * folder, synced and renamed, so that a file with the right name is whole whatever ends the process; its hash is compared
 * all the same, because disks and people change files.
 *
 * A folder that cannot be written costs the keeping and nothing else. Several processes may do this at once: each writes
 * under a name of its own, and all write the same bytes.
 */

import { createHash } from 'node:crypto'
import {
  closeSync,
  constants,
  fstatSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readdirSync,
  readSync,
  renameSync,
  rmSync,
  statSync,
  writeSync,
} from 'node:fs'
import { join } from 'node:path'
import { assert } from '../../engine/result.ts'

/** What is wanted. */
export type TableWish = {
  readonly folder: string
  /** The file is `NAME.bin`. */
  readonly name: string
  /** Filled; may lie on shared memory. */
  readonly bytes: Uint8Array
  /** SHA-256 of the bytes, 64 hexadecimal digits. */
  readonly hash: string
  /** Makes the bytes anew, all of them. */
  readonly make: (bytes: Uint8Array) => void
}

/** How it went. */
export type TableOutcome = {
  /** `made-again`: there was a file, and it could not be used. */
  readonly how: 'read' | 'made' | 'made-again'
  /** Why a file that was there could not be used, in a few words. */
  readonly wrong?: string
  /** Why the table is not kept, in a few words: the next start makes it again. */
  readonly notKept?: string
}

/** For nobody else on this machine, like all of the data folder. */
const FOLDER_MODE = 0o700
const FILE_MODE = 0o600
const UNFINISHED = '.unfinished'
/** A write takes a second or less; a file that was begun longer ago has been left behind. */
const LEFT_BEHIND_MS = 600_000
/** Bytes of one write: a disk that fills up refuses between two of them. */
const BYTES_PER_WRITE = 4_194_304

/** @returns how the bytes came to be there. Asserts that made bytes have the hash. */
export function readOrMakeTable(wish: TableWish): TableOutcome {
  const file = join(wish.folder, `${wish.name}.bin`)
  removeLeftBehind(wish)
  const read = readWhole(file, wish)
  if (read === 'whole') return { how: 'read' }
  wish.make(wish.bytes)
  const made = hashOf(wish.bytes)
  assert(made === wish.hash, `the table ${wish.name} is made with its listed hash, not ${made}`)
  const notKept = keep(file, wish)
  return {
    ...(read === 'absent' ? { how: 'made' } : { how: 'made-again', wrong: read.wrong }),
    ...(notKept === undefined ? {} : { notKept }),
  }
}

function readWhole(file: string, { bytes, hash }: TableWish): 'whole' | 'absent' | { wrong: string } {
  try {
    // Without O_NONBLOCK a pipe in the file's place would be waited for.
    const descriptor = openSync(file, constants.O_RDONLY | constants.O_NONBLOCK)
    try {
      const facts = fstatSync(descriptor)
      if (!facts.isFile()) return { wrong: 'it is no file' }
      if (facts.size !== bytes.length) return { wrong: `it has ${facts.size} bytes instead of ${bytes.length}` }
      let nRead = 0
      while (nRead < bytes.length) {
        const nMore = readSync(descriptor, bytes, nRead, bytes.length - nRead, nRead)
        if (nMore === 0) return { wrong: 'it ends too soon' }
        nRead += nMore
      }
      return hashOf(bytes) === hash ? 'whole' : { wrong: 'its bytes are not those of the table' }
    } finally {
      closeSync(descriptor)
    }
  } catch (fault) {
    const code = codeOf(fault)
    return code === 'ENOENT' || code === 'ENOTDIR' ? 'absent' : { wrong: code }
  }
}

/** @returns why it could not be kept */
function keep(file: string, { folder, name, bytes }: TableWish): string | undefined {
  const unfinished = join(folder, `${name}.${process.pid}-${Date.now().toString(36)}${UNFINISHED}`)
  try {
    mkdirSync(folder, { recursive: true, mode: FOLDER_MODE })
    const descriptor = openSync(unfinished, 'wx', FILE_MODE)
    try {
      for (let at = 0; at < bytes.length; ) {
        at += writeSync(descriptor, bytes, at, Math.min(BYTES_PER_WRITE, bytes.length - at))
      }
      fsyncSync(descriptor)
    } finally {
      closeSync(descriptor)
    }
    renameSync(unfinished, file)
    return undefined
  } catch (fault) {
    remove(unfinished)
    return codeOf(fault)
  }
}

function remove(file: string): void {
  try {
    rmSync(file, { force: true })
  } catch {
    // Where nothing can be written, nothing can be removed; the next start tries again.
  }
}

/** Removes what a process that is gone had begun to write. */
function removeLeftBehind({ folder, name }: TableWish): void {
  try {
    for (const entry of readdirSync(folder)) {
      if (!entry.startsWith(`${name}.`) || !entry.endsWith(UNFINISHED)) continue
      const path = join(folder, entry)
      const pid = Number(entry.slice(name.length + 1).split('-')[0])
      const ageMs = Date.now() - statSync(path).mtimeMs
      // In a container every start may have the same number.
      const isOfEarlierRun = pid === process.pid && ageMs > 1_000 * process.uptime()
      if (isOfEarlierRun || ageMs > LEFT_BEHIND_MS || !isAlive(pid)) remove(path)
    }
  } catch {
    // No folder yet, or one that may not be read or written: nothing to tidy.
  }
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0)
    return true
  } catch (fault) {
    return codeOf(fault) === 'EPERM'
  }
}

function hashOf(bytes: Uint8Array): string {
  return createHash('sha256').update(bytes).digest('hex')
}

function codeOf(fault: unknown): string {
  return (fault as NodeJS.ErrnoException).code ?? String(fault)
}
